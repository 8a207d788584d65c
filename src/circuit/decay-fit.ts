import { solveSymmetric } from '../numerics/index.js';

/**
 * How the creep of a wall lets the pressure fall: by a power of time, a straight line of the logarithms, which flattens soonest; or along time to the
 * power 0.2, which flattens latest.
 */
export type CreepForm = 'early' | 'late';

/** The greatest power of time by which polyethylene creeps. */
const LATE_POWER = 0.2;
/** Standard error of the drift of a temperature that nobody read, `common practice` for pipe out of the sun [K/h]. */
const UNREAD_DRIFT = 0.1;

/** Readings that {@link fitDecay} takes apart. */
export interface DecaySeries {
  /** Time of each since the wall was loaded [s]. */
  readonly times: readonly number[];
  /** Pressure of each [Pa]. */
  readonly pressures: readonly number[];
  /** Temperature of each over that of the first [K]; none where it was not read. */
  readonly warming: readonly number[] | undefined;
  /** Standard error of a reading [Pa]. */
  readonly gaugeError: number;
  /** Pressure per kelvin and its standard error, as the pipe has it [Pa/K]. */
  readonly perKelvin: { readonly estimate: number; readonly error: number };
}

/** A fall of pressure taken apart. */
export interface DecayFit {
  /** Pressure that creep takes from the first reading to the last [Pa]. */
  readonly creep: number;
  /** Pressure that a leak takes in an hour [Pa]. */
  readonly leak: number;
  /** Standard error of that, with the drift of a temperature that was not read [Pa]. */
  readonly leakError: number;
  /** What both take from the first reading to the last [Pa]. */
  readonly fall: number;
  /** Readings left over once everything is fitted. */
  readonly freedom: number;
  /** Scatter about creep alone [Pa]. */
  readonly creepScatter: number;
  /** Scatter about creep and leak [Pa]. */
  readonly leakScatter: number;
}

/** Fits creep, and creep with a leak, to a fall of pressure. */
export function fitDecay(form: CreepForm, series: DecaySeries): DecayFit {
  const { times, pressures, warming, gaugeError, perKelvin } = series;
  const mean = pressures.reduce((sum, each) => sum + each, 0) / pressures.length;
  const hours = times.map((time) => time / 3600);
  const fall = pressures.map((each) => (form === 'early' ? mean * Math.log(each / mean) : each - mean));
  // What a kelvin does is known before the test, within limits: it enters as one reading more, of the weight of its own error.
  const weight = warming === undefined ? 0 : gaugeError / perKelvin.error;
  const crept = hours.map((hour) => (form === 'early' ? Math.log(hour) : hour ** LATE_POWER));
  const [start = 0, end = 0] = [crept[0], crept.at(-1)];
  const rowOf = (hour: number, index: number): readonly number[] => [1, (start - (crept[index] ?? 0)) / (end - start), -hour, warming?.[index] ?? 0];
  const prior = warming === undefined ? [] : [{ row: [0, 0, 0, weight], value: weight * perKelvin.estimate }];
  const rows = [...hours.map((hour, index) => ({ row: rowOf(hour, index), value: fall[index] ?? 0 })), ...prior];

  const creepOnly = leastSquares(rows, warming === undefined ? [0, 1] : [0, 1, 3]);
  const leaking = leastSquares(rows, warming === undefined ? [0, 1, 2] : [0, 1, 2, 3]);
  const freedom = times.length - 3;
  const scatter = Math.sqrt(leaking.squares / freedom);
  const drift = warming === undefined ? UNREAD_DRIFT * perKelvin.estimate : 0;
  const [, creep = 0, leak = 0] = leaking.found;
  return {
    creep,
    leak,
    leakError: Math.hypot(Math.max(scatter, gaugeError) * Math.sqrt(leaking.variances[2] ?? 0), drift),
    fall: creep + leak * ((hours.at(-1) ?? 0) - (hours[0] ?? 0)),
    freedom,
    creepScatter: Math.sqrt(creepOnly.squares / (freedom + 1)),
    leakScatter: scatter,
  };
}

interface Row {
  readonly row: readonly number[];
  readonly value: number;
}

/** Least squares over some columns: what they are found to be, their variances for a scatter of 1, and the sum of squares left. */
function leastSquares(
  rows: readonly Row[],
  columns: readonly number[],
): { readonly found: readonly number[]; readonly variances: readonly number[]; readonly squares: number } {
  const entry = ({ row }: Row, column: number): number => row[column] ?? 0;
  const sum = (of: (row: Row) => number): number => rows.reduce((total, row) => total + of(row), 0);
  const matrix = columns.map((i) => columns.map((j) => sum((row) => entry(row, i) * entry(row, j))));
  const right = columns.map((i) => sum((row) => entry(row, i) * row.value));
  const found = solveSymmetric(matrix, right);
  const variances = columns.map(
    (_, at) =>
      solveSymmetric(
        matrix,
        columns.map((__, other) => (other === at ? 1 : 0)),
      )[at] ?? 0,
  );
  const squares = sum((row) => (row.value - columns.reduce((total, column, at) => total + entry(row, column) * (found[at] ?? 0), 0)) ** 2);
  return { found, variances, squares };
}
