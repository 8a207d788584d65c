/** What is asked: x of no negative entry for which A·x comes nearest to b. */
export interface NonNegativeProblem {
  /** Columns of A, one after the other: entry i of column j stands at j · rows + i. */
  readonly matrix: Float64Array;
  /** b, as long as a column. */
  readonly right: Float64Array;
}

/** The x found. */
export interface NonNegativeSolution {
  /** x, every entry 0 or more. */
  readonly solution: Float64Array;
  /**
   * How far the conditions of Karush, Kuhn and Tucker are missed, with r = b − A·x: the greatest |aⱼ·r|/(|aⱼ||b|) of the columns in use, and aⱼ·r/(|aⱼ||b|)
   * of those that are not. Zero proves that no x is better, since the problem is convex.
   */
  readonly optimality: number;
}

/** Slopes below this share of |aⱼ||b| are rounding. */
const ROUNDING = 1e-13;
/** What must be left of a column after the columns in use have been taken out of it, as a share of it. */
const INDEPENDENT = 1e-12;

/**
 * Least squares without negative entries, by the active set of Lawson and Hanson on an orthonormal basis of the columns in use. Columns that are nearly
 * parallel do no harm, as they would in normal equations.
 *
 * @param problem - columns and right-hand side, finite and none of them all 0
 * @returns x, and how nearly it is the best; after three rounds for each column x as far as it has come
 * @remarks Lawson & Hanson, Solving Least Squares Problems, chapter 23.
 */
export function nnls({ matrix, right }: NonNegativeProblem): NonNegativeSolution {
  const rows = right.length;
  const columns = Array.from({ length: matrix.length / rows }, (_, j) => matrix.subarray(j * rows, (j + 1) * rows));
  const scales = columns.map((column) => norm(column) * norm(right));
  const basis = new ColumnBasis(columns, right);
  let solution: Float64Array = new Float64Array(columns.length);
  const slope = (j: number): number => basis.slope(j) / (scales[j] ?? 1);

  // Columns that look promising by rounding alone: they add nothing, or would turn negative at once.
  const useless = new Set<number>();
  for (let round = 0; round < 3 * columns.length; round += 1) {
    let entering = -1;
    let steepest = ROUNDING;
    for (let j = 0; j < columns.length; j += 1) {
      if (basis.uses(j) || useless.has(j)) continue;
      const candidate = slope(j);
      if (candidate > steepest) [entering, steepest] = [j, candidate];
    }
    if (entering < 0) break;
    if (!basis.add(entering)) {
      useless.add(entering);
      continue;
    }
    let trial = basis.solve();
    let moved = false;
    for (let met = wallMet(solution, trial); met.walls.size > 0; met = wallMet(solution, trial)) {
      for (const [j, goal] of trial.entries()) {
        const from = solution[j] ?? 0;
        solution[j] = met.walls.has(j) ? 0 : Math.max(0, from + met.share * (goal - from));
      }
      moved ||= met.share > 0;
      basis.drop(met.walls);
      trial = basis.solve();
    }
    solution = trial;
    if (moved || basis.uses(entering)) useless.clear();
    else useless.add(entering);
  }
  return { solution, optimality: missedBy(columns, right, solution) };
}

/** See {@link NonNegativeSolution.optimality}: worked out from x alone, so that it tells of the rounding in x too. */
function missedBy(columns: readonly Float64Array[], right: Float64Array, solution: Float64Array): number {
  const residual = right.slice();
  for (const [j, column] of columns.entries()) addTo(residual, -(solution[j] ?? 0), column);
  const misses = columns.map((column, j) => {
    const miss = dot(column, residual) / (norm(column) * norm(right));
    return (solution[j] ?? 0) > 0 ? Math.abs(miss) : miss;
  });
  return Math.max(0, ...misses);
}

/** The entries that reach 0 first on the way from `solution` to `trial`, and the share of the way to there; none when `trial` has no negative entry. */
function wallMet(solution: Float64Array, trial: Float64Array): { readonly share: number; readonly walls: ReadonlySet<number> } {
  let share = 1;
  let walls = new Set<number>();
  for (const [j, goal] of trial.entries()) {
    if (goal >= 0) continue;
    const from = solution[j] ?? 0;
    const candidate = from / (from - goal);
    if (candidate < share) walls = new Set();
    if (candidate <= share) walls.add(j);
    share = Math.min(share, candidate);
  }
  return { share, walls };
}

/** The columns in use as Q·R, one basis vector of Q and one column of R each, and what is left of b beside them. */
class ColumnBasis {
  readonly #columns: readonly Float64Array[];
  readonly #right: Float64Array;
  readonly #residual: Float64Array;
  /** Which columns, in the order of Q. */
  #order: number[] = [];
  #directions: Float64Array[] = [];
  #triangle: Float64Array[] = [];
  /** Qᵀ·b. */
  #shares: number[] = [];

  constructor(columns: readonly Float64Array[], right: Float64Array) {
    this.#columns = columns;
    this.#right = right;
    this.#residual = right.slice();
  }

  uses(j: number): boolean {
    return this.#order.includes(j);
  }

  slope(j: number): number {
    return dot(this.#columns[j] ?? this.#right, this.#residual);
  }

  // Takes a column in; says no when nothing of it is left beside those in use.
  add(j: number): boolean {
    const direction = (this.#columns[j] ?? this.#right).slice();
    const size = norm(direction);
    const triangle = new Float64Array(this.#order.length + 1);
    // Once more, since the first time leaves rounding of the size of what was taken out.
    for (let pass = 0; pass < 2; pass += 1)
      for (const [i, other] of this.#directions.entries()) triangle[i] = (triangle[i] ?? 0) + takeOut(other, direction);
    const rest = norm(direction);
    if (rest <= INDEPENDENT * size) return false;
    for (let i = 0; i < direction.length; i += 1) direction[i] = (direction[i] ?? 0) / rest;
    triangle[this.#order.length] = rest;
    this.#order.push(j);
    this.#directions.push(direction);
    this.#triangle.push(triangle);
    this.#shares.push(takeOut(direction, this.#residual));
    return true;
  }

  // Puts columns out; those taken in after the first of them are taken in anew.
  drop(those: ReadonlySet<number>): void {
    const first = this.#order.findIndex((j) => those.has(j));
    const later = this.#order.slice(first).filter((j) => !those.has(j));
    this.#order = this.#order.slice(0, first);
    this.#directions = this.#directions.slice(0, first);
    this.#triangle = this.#triangle.slice(0, first);
    this.#residual.set(this.#right);
    this.#shares = this.#directions.map((direction) => takeOut(direction, this.#residual));
    for (const j of later) this.add(j);
  }

  // The x nearest to b with the columns in use alone, of either sign; 0 for the others.
  solve(): Float64Array {
    const solution = new Float64Array(this.#columns.length);
    const rest = this.#shares.slice();
    for (let k = rest.length - 1; k >= 0; k -= 1) {
      const triangle = this.#triangle[k] ?? [];
      const entry = (rest[k] ?? 0) / (triangle[k] ?? 1);
      for (let i = 0; i < k; i += 1) rest[i] = (rest[i] ?? 0) - entry * (triangle[i] ?? 0);
      solution[this.#order[k] ?? 0] = entry;
    }
    return solution;
  }
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}

function norm(a: Float64Array): number {
  return Math.sqrt(dot(a, a));
}

/** Takes the part along a direction of length 1 out of a vector and returns how long it was. */
function takeOut(direction: Float64Array, vector: Float64Array): number {
  const share = dot(direction, vector);
  addTo(vector, -share, direction);
  return share;
}

function addTo(vector: Float64Array, times: number, other: Float64Array): void {
  for (let i = 0; i < vector.length; i += 1) vector[i] = (vector[i] ?? 0) + times * (other[i] ?? 0);
}
