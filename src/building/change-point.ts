import { solveSymmetric } from '../numerics/index.js';
import type { Shortfall } from './shortfall.js';

/** A mean load and the weather that it came with. */
export interface WeighedLoad {
  /** Mean load [W]. */
  readonly load: number;
  /** Share of all the time. */
  readonly weight: number;
  readonly below: (base: number) => Shortfall;
}

/** Where to look for the balance point, and what is known beforehand. */
export interface ChangePointTask {
  readonly loads: readonly WeighedLoad[];
  /** Bases to search between; equal where the balance point is held [degC]. */
  readonly lowest: number;
  readonly highest: number;
  /** Load that does not hang on the weather, where it is known [W]. */
  readonly baseLoad: number | undefined;
}

/** The line through the loads for one balance point. */
export interface ChangePointLine {
  readonly balancePoint: number;
  readonly slope: number;
  readonly baseLoad: number;
  /** Weighed sum of squared residuals [W2]. */
  readonly squares: number;
}

/** Width of the first search [K]. */
const STRIDE = 0.25;
/** Halvings, or golden cuts, that bring a stride below a millionth of a kelvin. */
const CUTS = 32;
const GOLDEN = 0.6180339887498949;
/** Below this share of its own size the variation of the shortfall is rounding. */
const ROUNDING = 1e-12;

/** Least squares of base load and slope for one balance point; nothing where the weather was the same in all periods. */
export function lineAt({ loads, baseLoad }: ChangePointTask, balancePoint: number): ChangePointLine | undefined {
  let [load, mean] = [0, 0];
  const points = loads.map((each) => ({ ...each, shortfall: each.below(balancePoint).mean }));
  for (const each of points) {
    load += each.weight * each.load;
    mean += each.weight * each.shortfall;
  }
  // With a known base load the line turns about the point where there is no shortfall, else about the middle of all.
  const [about, level] = baseLoad === undefined ? [mean, load] : [0, baseLoad];
  let [across, along] = [0, 0];
  for (const each of points) {
    across += each.weight * (each.shortfall - about) * (each.load - level);
    along += each.weight * (each.shortfall - about) ** 2;
  }
  if (!(along > ROUNDING * mean * mean)) return undefined;
  const slope = across / along;
  const base = level - slope * about;
  let squares = 0;
  for (const each of points) squares += each.weight * (each.load - base - slope * each.shortfall) ** 2;
  return { balancePoint, slope, baseLoad: base, squares };
}

const squaresOf = (line: ChangePointLine | undefined): number => line?.squares ?? Infinity;

/** The line with the least sum of squares: a walk over all balance points, then golden cuts about the best; nothing where there is no line. */
export function bestLine(task: ChangePointTask): ChangePointLine | undefined {
  const { lowest, highest } = task;
  const steps = Math.ceil((highest - lowest) / STRIDE);
  let best = lineAt(task, lowest);
  for (let step = 1; step <= steps; step += 1) {
    const line = lineAt(task, Math.min(highest, lowest + step * STRIDE));
    if (squaresOf(line) < squaresOf(best)) best = line;
  }
  if (best === undefined || steps <= 0) return best;
  let [low, high] = [Math.max(lowest, best.balancePoint - STRIDE), Math.min(highest, best.balancePoint + STRIDE)];
  for (let cut = 0; cut < CUTS; cut += 1) {
    const [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
    if (squaresOf(lineAt(task, left)) < squaresOf(lineAt(task, right))) high = right;
    else low = left;
  }
  const middle = lineAt(task, (low + high) / 2);
  return squaresOf(middle) < best.squares ? middle : best;
}

/** The nearest balance point on one side whose sum of squares reaches a limit; nothing where none does within the search. */
export function profileLimit(task: ChangePointTask, best: ChangePointLine, limit: number, side: -1 | 1): number | undefined {
  const end = side < 0 ? task.lowest : task.highest;
  let inside = best.balancePoint;
  for (;;) {
    const next = side < 0 ? Math.max(end, inside - STRIDE) : Math.min(end, inside + STRIDE);
    if (squaresOf(lineAt(task, next)) > limit) {
      let outside = next;
      for (let cut = 0; cut < CUTS; cut += 1) {
        const middle = (inside + outside) / 2;
        if (squaresOf(lineAt(task, middle)) > limit) outside = middle;
        else inside = middle;
      }
      return (inside + outside) / 2;
    }
    if (next === end) return undefined;
    inside = next;
  }
}

/** From here on columns of unit length are the same but for rounding: two of the numbers cannot be told apart. */
const UNTOLD = 1e8;

/**
 * Variance of a quantity with a gradient in base load, slope and balance point, for weighed loads of variance one; nothing where they do not tell it.
 *
 * @param free - which of the three are fitted
 */
export function lineVariance(
  { loads }: ChangePointTask,
  { slope, balancePoint }: ChangePointLine,
  free: readonly boolean[],
  gradient: readonly number[],
): number | undefined {
  const fitted = (row: readonly number[]): readonly number[] => row.filter((_, index) => free[index]);
  const rows = loads.map(({ weight, below }) => {
    const { mean, share } = below(balancePoint);
    return fitted([1, mean, slope * share].map((each) => Math.sqrt(weight) * each));
  });
  const over = (of: (row: readonly number[]) => number): number => rows.reduce((sum, row) => sum + of(row), 0);
  // Each column is taken in its own size, so that watts and kelvins weigh alike where the equations are solved.
  const sizes = fitted(gradient).map((_, i) => Math.sqrt(over((row) => (row[i] ?? 0) ** 2)));
  const size = (i: number): number => sizes[i] ?? 1;
  const normal = sizes.map((_, i) => sizes.map((__, j) => over((row) => ((row[i] ?? 0) * (row[j] ?? 0)) / (size(i) * size(j)))));
  const right = fitted(gradient).map((each, i) => each / size(i));
  const solved = solveSymmetric(normal, right);
  const [variance, length] = [right.reduce((sum, each, i) => sum + each * (solved[i] ?? 0), 0), right.reduce((sum, each) => sum + each * each, 0)];
  // Columns that are all but the same make it huge or, by rounding, no number at all.
  return variance >= 0 && variance <= UNTOLD * length ? variance : undefined;
}
