import { nnls, solveSymmetric } from '../../src/numerics/index.js';
import { type Fixture, type FixtureRow, loadFixture } from '../support/fixture.js';
import type { DailyAir } from '../../src/climate/index.js';
import { celsius, dayOfYear } from '../../src/units/index.js';

/** One day of a record of soil temperatures: days since 1 January of its first year at noon, and what was read by depth in metres. */
export interface SoilDay {
  readonly year: number;
  readonly time: number;
  readonly readings: ReadonlyMap<number, number>;
}

const dateOf = (row: FixtureRow): readonly [year: number, time: number] => {
  const [year = 0, month = 1, day = 1] = row.text('date').split('-').map(Number);
  return [year, (Date.UTC(year, month - 1, day) - Date.UTC(year, 0, 1)) / 864e5];
};

const DAYS_PER_YEAR = 365.25;
const yearStart = (first: number, year: number): number => (Date.UTC(year, 0, 1) - Date.UTC(first, 0, 1)) / 864e5;

/** Soil temperatures of a daily record. */
export function soilDays(fixture: Fixture, depths: readonly number[]): readonly SoilDay[] {
  const [first] = fixture.rows.map(dateOf).at(0) ?? [0];
  return fixture.rows.map((row) => {
    const [year, day] = dateOf(row);
    const read = depths.flatMap((depth): [number, number][] => {
      const column = `t_soil_${String(Math.round(100 * depth)).padStart(3, '0')}cm_c`;
      return row.has(column) ? [[depth, row.number(column)]] : [];
    });
    return { year, time: yearStart(first, year) + day + 0.5, readings: new Map(read) };
  });
}

/** Daily means of the air of a record, missing days left out. */
export const airDays = (name: string, column = 't_air_avg_c'): readonly DailyAir[] =>
  loadFixture(name).rows.flatMap((row) => {
    const [year, day] = dateOf(row);
    return row.has(column) ? [{ year, day: dayOfYear(day + 1), mean: celsius(row.number(column)) }] : [];
  });

/** A wave through all depths: its temperature at a depth and time, and the diffusivity that it goes with [m2/d]. */
export interface JointWave {
  readonly at: (depth: number, time: number) => number;
  readonly diffusivity: number;
}

/** Least squares of mean, amplitude, phase and diffusivity through all readings: linear in the first three, the last by golden section. */
export function jointWave(days: readonly SoilDay[]): JointWave {
  const fitWith = (diffusivity: number): { readonly squares: number; readonly wave: JointWave } => {
    const damping = Math.sqrt((diffusivity * DAYS_PER_YEAR) / Math.PI);
    const terms = (depth: number, time: number): readonly number[] => {
      const angle = (2 * Math.PI * time) / DAYS_PER_YEAR - depth / damping;
      const left = Math.exp(-depth / damping);
      return [1, left * Math.cos(angle), left * Math.sin(angle)];
    };
    const normal = [0, 1, 2].map(() => [0, 0, 0]);
    const right = [0, 0, 0];
    let total = 0;
    for (const { time, readings } of days) {
      for (const [depth, reading] of readings) {
        const term = terms(depth, time);
        for (const i of [0, 1, 2]) {
          right[i] = (right[i] ?? 0) + (term[i] ?? 0) * reading;
          const row = normal[i] ?? [];
          for (const j of [0, 1, 2]) row[j] = (row[j] ?? 0) + (term[i] ?? 0) * (term[j] ?? 0);
        }
        total += reading ** 2;
      }
    }
    const fitted = solveSymmetric(normal, right);
    const explained = fitted.reduce((sum, each, i) => sum + each * (right[i] ?? 0), 0);
    const at = (depth: number, time: number): number => terms(depth, time).reduce((sum, term, i) => sum + term * (fitted[i] ?? 0), 0);
    return { squares: total - explained, wave: { at, diffusivity } };
  };
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [0.01, 0.15];
  for (let step = 0; step < 24; step += 1) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    if (fitWith(left).squares < fitWith(right).squares) high = right;
    else low = left;
  }
  return fitWith((low + high) / 2).wave;
}

/** Means over so many days that end with each day, by day of the list; none where more than a tenth is missing. */
export function runningMeans(row: readonly (number | undefined)[], length: number): readonly (number | undefined)[] {
  let [sum, present] = [0, 0];
  return row.map((each, index) => {
    const leaving = row[index - length];
    if (each !== undefined) [sum, present] = [sum + each, present + 1];
    if (leaving !== undefined) [sum, present] = [sum - leaving, present - 1];
    return index >= length - 1 && present >= 0.9 * length ? sum / present : undefined;
  });
}

/** Departures from a wave at a depth, averaged; days that are not of the choice count as missing. */
export const departures = (
  days: readonly SoilDay[],
  {
    wave,
    depth,
    length,
    of = () => true,
  }: { readonly wave: JointWave; readonly depth: number; readonly length: number; readonly of?: (day: SoilDay) => boolean },
): readonly (number | undefined)[] => {
  const row = days.map((day) => {
    const reading = day.readings.get(depth);
    return reading === undefined || !of(day) ? undefined : reading - wave.at(depth, day.time);
  });
  return runningMeans(row, length);
};

/** Variances of three sines that best give the mean squares of departures, each weighed by its own size. */
export function straying(rows: readonly { readonly square: number; readonly shares: readonly number[] }[]): readonly number[] {
  const columns = rows[0]?.shares.map((_, column) => rows.map(({ square, shares }) => (shares[column] ?? 0) / square)) ?? [];
  const { solution } = nnls({ matrix: Float64Array.from(columns.flat()), right: new Float64Array(rows.length).fill(1) });
  return [...solution].map((variance) => Math.sqrt(variance));
}
