import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Fraction, Shape, Temperature, Time } from '../units/index.js';
import { type AirReadings, demandReadings } from './air-readings.js';
import { YEAR } from './limits.js';

/** A temperature and the share of the time that is warmer. */
export interface ExceededTemperature {
  /** Share of the time above the temperature [1]. */
  readonly exceeded: Fraction;
  /** The temperature [degC]. */
  readonly temperature: Temperature;
}

/** Outdoor temperatures that heating and cooling are designed with. */
export interface DesignTemperatures {
  /** Exceeded in 99.6, 99 and 98 % of the time, for heating [degC]. */
  readonly heating: readonly ExceededTemperature[];
  /** Exceeded in 0.4, 1 and 2 % of the time, for cooling [degC]. */
  readonly cooling: readonly ExceededTemperature[];
  /** Lowest reading [degC]. */
  readonly lowest: Temperature;
  /** Highest reading [degC]. */
  readonly highest: Temperature;
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** What {@link exceededTemperature} needs. */
export interface ExceededTemperatureInput extends AirReadings {
  /** Share of the time that is to be warmer, 0 to 1 [1]. */
  readonly exceeded: Fraction;
}

const exceededShape = { exceeded: 'fraction', temperature: 'temperature' } as const;

/** Shape of {@link DesignTemperatures}, its findings apart. */
export const designTemperaturesShape: Shape<Omit<DesignTemperatures, 'findings'>> = {
  heating: { list: exceededShape },
  cooling: { list: exceededShape },
  lowest: 'temperature',
  highest: 'temperature',
};

const HEATING = [0.996, 0.99, 0.98] as const;
const COOLING = [0.004, 0.01, 0.02] as const;

/** From this much of a record on its tails are those of the climate and not of one year: 25 years [s]. */
const LONG_RECORD = 788_400_000 as Time;

/**
 * Outdoor design temperatures by their share of the hours of the year.
 *
 * A typical year is milder in its tails than the years it was put together from: where a handbook or the header of a weather file has design
 * temperatures of a long record, those go first. Days of means have no night in them; give hours.
 *
 * @param readings - temperatures of whole years [degC] and the length of their step [s]
 * @returns the usual three temperatures for heating and for cooling, the extremes [degC], and findings
 * @throws InputError when a number is impossible
 * @remarks
 * Annual cumulative shares by {@link exceededTemperature}. Source: `common practice`. Checked against four public weather years sorted independently; in one of the two
 * that have a header the 99.6 % of the file is 1.2 K milder than that of the long record.
 *
 * Invariants: within the readings; colder the more of the time exceeds it; a shift of the readings shifts all.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, hours } = await import('../units/index.js');
 * const temperatures = Array.from({ length: 8760 }, (_, hour) => celsius(10 - 20 * Math.cos((2 * Math.PI * hour) / 8760)));
 * const { heating, findings } = designTemperatures({ temperatures, step: hours(1) });
 * expect(heating.map(({ temperature }) => temperature)).toEqual([-9.998, -9.99, -9.96].map((t): unknown => expect.closeTo(t, 3)));
 * expect(findings.map(({ code }) => code)).toEqual(['design-temperatures-short-record']);
 * ```
 */
export function designTemperatures(readings: AirReadings): DesignTemperatures {
  demandReadings(readings);
  const sorted = Float64Array.from(readings.temperatures).sort();
  const list = (shares: readonly number[]): readonly ExceededTemperature[] =>
    shares.map((exceeded) => ({ exceeded: exceeded as Fraction, temperature: atShare(sorted, 1 - exceeded) }));
  return {
    heating: list(HEATING),
    cooling: list(COOLING),
    lowest: atShare(sorted, 0),
    highest: atShare(sorted, 1),
    findings: recordFindings((sorted.length * readings.step) as Time),
  };
}

/**
 * The temperature that a share of the time is warmer than.
 *
 * @param input - temperatures [degC], the length of their step [s], and the share of the time that is to be warmer [1]
 * @returns the temperature [degC]
 * @throws InputError when a number is impossible
 * @remarks
 * Readings sorted, the share taken of the distance between the first and the last of them, straight between neighbours. Source: `common practice`.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, fraction, hours } = await import('../units/index.js');
 * const temperatures = [5, -10, 0, 10, -5].map((t) => celsius(t));
 * expect(exceededTemperature({ temperatures, step: hours(1), exceeded: fraction(0.9) })).toBeCloseTo(-8, 9);
 * ```
 */
export function exceededTemperature({ exceeded, ...readings }: ExceededTemperatureInput): Temperature {
  demandReadings(readings);
  demand('exceeded', 'fraction', exceeded, { atLeast: 0, atMost: 1 });
  return atShare(Float64Array.from(readings.temperatures).sort(), 1 - exceeded);
}

function atShare(sorted: Float64Array, share: number): Temperature {
  const rank = share * (sorted.length - 1);
  const below = Math.floor(rank);
  const [low = 0, high = low] = sorted.subarray(below, below + 2);
  return (low + (rank - below) * (high - low)) as Temperature;
}

function recordFindings(record: Time): readonly Finding[] {
  if (record >= LONG_RECORD) return [];
  const level = record < 0.98 * YEAR ? 'warning' : 'note';
  return [{ code: 'design-temperatures-short-record', level, values: { record, longRecord: LONG_RECORD }, source: 'common practice' }];
}
