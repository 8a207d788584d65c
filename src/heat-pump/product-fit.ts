import { type ColumnFit, fitColumns } from './fit-columns.js';

/** A product a(t) · f(x) of two polynomials through points, with f(1) = 1. */
export interface ProductFit {
  /** Coefficients of a, for rising powers of t. */
  readonly main: readonly number[];
  /** Coefficients of f, for rising powers of x. */
  readonly factor: readonly number[];
  /** What the fit leaves of each point. */
  readonly residuals: readonly number[];
  /** Standard errors of both, for readings with a standard deviation of one. */
  readonly mainErrors: readonly number[];
  readonly factorErrors: readonly number[];
}

/** A point of it. */
export interface ProductPoint {
  readonly t: number;
  readonly x: number;
  readonly y: number;
}

/** More steps than any table needs; each one squares the error. */
const MOST_STEPS = 60;
/** A change of the coefficients that is rounding [1]. */
const SETTLED = 1e-12;

const polynomial = (coefficients: readonly number[], t: number): number => coefficients.reduceRight((sum, each) => sum * t + each, 0);
/** Factor of the flow about its own value at x = 1. */
const about = (bends: readonly number[], x: number): number => 1 + (x - 1) * polynomial(bends, x - 1);

/** Powers of t told in powers of (t − c)/h, and back: the coefficients of each power of t as a row over those of z. */
const unshifted = (size: number, centre: number, half: number): readonly (readonly number[])[] => {
  const [c, h] = [centre, half];
  const rows = [
    [1, -c / h, (c * c) / (h * h)],
    [0, 1 / h, (-2 * c) / (h * h)],
    [0, 0, 1 / (h * h)],
  ];
  return rows.slice(0, size).map((row) => row.slice(0, size));
};

/**
 * Least squares of the product, by Newton's steps with the second derivatives left out; nothing where the points do not tell its parts apart.
 *
 * @param points - the points
 * @param mainSize - coefficients of a, 1 to 3
 * @param bendSize - powers of x in f, 0 to 2
 */
export function fitProduct(points: readonly ProductPoint[], mainSize: number, bendSize: number): ProductFit | undefined {
  const places = points.map(({ t }) => t);
  const [low, high] = [Math.min(...places), Math.max(...places)];
  const [centre, half] = [(low + high) / 2, (high - low) / 2];
  const z = places.map((t) => (t - centre) / half);
  const powers = Array.from({ length: mainSize }, (_, power) => z.map((each) => each ** power));
  const values = points.map(({ y }) => y);
  const start = fitColumns(powers, values);
  if (start === undefined) return undefined;
  let main: readonly number[] = start.coefficients;
  let bends: readonly number[] = Array.from({ length: bendSize }, () => 0);
  for (let count = 0; count < MOST_STEPS; count += 1) {
    const [a, g] = [main, bends];
    const columns = [
      ...powers.map((power) => power.map((each, row) => each * about(g, points[row]?.x ?? 1))),
      ...g.map((_, power) => points.map(({ x }, row) => polynomial(a, z[row] ?? 0) * (x - 1) ** (power + 1))),
    ];
    const left = points.map(({ x, y }, row) => y - polynomial(a, z[row] ?? 0) * about(g, x));
    const step = fitColumns(columns, left);
    if (step === undefined) return undefined;
    const { coefficients } = step;
    main = a.map((each, i) => each + (coefficients[i] ?? 0));
    bends = g.map((each, i) => each + (coefficients[mainSize + i] ?? 0));
    const moved = coefficients.map((each, i) => Math.abs(each) / (i < mainSize ? Math.max(...values) : 1));
    if (Math.max(...moved) < SETTLED) return written(points, { main, bends, step }, unshifted(mainSize, centre, half), (row) => z[row] ?? 0);
  }
  return undefined;
}

function written(
  points: readonly ProductPoint[],
  { main, bends, step }: { readonly main: readonly number[]; readonly bends: readonly number[]; readonly step: ColumnFit },
  rows: readonly (readonly number[])[],
  z: (row: number) => number,
): ProductFit {
  const factorRows = [
    [-1, 1],
    [1, -2],
    [0, 1],
  ]
    .slice(0, bends.length + 1)
    .map((row) => row.slice(0, bends.length));
  const times = (row: readonly number[], of: readonly number[]): number => row.reduce((sum, each, i) => sum + each * (of[i] ?? 0), 0);
  const error = (gradient: readonly number[]): number => Math.sqrt(Math.max(0, step.varianceOf(gradient)));
  return {
    main: rows.map((row) => times(row, main)),
    factor: factorRows.map((row, power) => Number(power === 0) + times(row, bends)),
    residuals: points.map(({ x, y }, row) => y - polynomial(main, z(row)) * about(bends, x)),
    mainErrors: rows.map((row) => error([...row, ...bends.map(() => 0)])),
    factorErrors: factorRows.map((row) => error([...main.map(() => 0), ...row])),
  };
}
