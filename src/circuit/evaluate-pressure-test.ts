import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Situation } from '../safety/index.js';
import { studentBelow, studentQuantile } from '../numerics/index.js';
import { type Band, bandShape } from '../states/index.js';
import type { Fraction, Pressure, Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { type DecayFit, fitDecay } from './decay-fit.js';
import { doubtsOf, ratingFinding } from './pressure-test-doubts.js';
import { pressureSeries } from './pressure-series.js';
import type { PipeRing, WallGive } from './wall-give.js';

/** One reading of a pressure test. */
export interface PressureReading {
  /** Time since the pressure was reached and the pump shut off, no water let in or out since, above 0 up to 30 days [s]. */
  readonly time: Time;
  /** Gauge pressure, 1e4 to 1e7 [Pa]. */
  readonly pressure: Pressure;
  /** Temperature of the water in the pipe, or of its wall, where it was read, 0 to 60 [degC]. */
  readonly temperature?: Temperature;
}

/** A loop filled with water, shut under pressure, and read. */
export interface PressureTest extends WallGive {
  /** The readings in order, 6 to 10000 of them. */
  readonly readings: readonly PressureReading[];
  /** Standard error of a reading: for a gauge read to a division, a third of it, 1 to 1e5 [Pa]. */
  readonly gaugeError: Pressure;
  /** The pipe that holds nearly all of the water. */
  readonly pipe: PipeRing;
  /** Time that raising the pressure took, during which the wall crept already; 0 when left out [s]. */
  readonly loadingTime?: Time;
  /** Fall of pressure in an hour that a leak must not go unseen with; 1 % of the first reading when left out [Pa]. */
  readonly leakToFind?: Pressure;
  /** What the weakest part bears at its temperature, 1e4 to 1e7; where left out, what the pipe would bear if it were the strongest polyethylene, in the cold [Pa]. */
  readonly rating?: Pressure;
}

/** What the readings say. */
export type PressureTestVerdict = 'tight' | 'leaking' | 'cannot be told';

/** A pressure test taken apart into creep and leak. */
export interface PressureTestEvaluation {
  /** `leaking`, or `tight` but for leaks less than the one to find, where the chance of being wrong is 5 % or less; else `cannot be told`. */
  readonly verdict: PressureTestVerdict;
  /** Chance that a tight loop would give readings that look as much like a leak as these, or more [1]. */
  readonly falseAlarm: Fraction;
  /** Chance that a loop with the leak to find would give readings that look as tight as these, or tighter [1]. */
  readonly missedLeak: Fraction;
  /** The leak that was to be found: fall of pressure in an hour [Pa]. */
  readonly leakToFind: Pressure;
  /** Fall of pressure in an hour that is a leak's, creep and warming taken off; limits of 90 %, either sign [Pa]. */
  readonly leakPerHour: Band<'pressure'>;
  /** Least leak that readings like these tell from creep with 5 % of error either way: fall of pressure in an hour [Pa]. */
  readonly leastLeakTold: Pressure;
  /** Fall of pressure by creep from the first reading to the last; limits by the form of creep [Pa]. */
  readonly creepFall: Band<'pressure'>;
  /** Scatter of the readings about creep alone [Pa]. */
  readonly creepScatter: Pressure;
  /** Scatter of the readings about creep and leak [Pa]. */
  readonly leakScatter: Pressure;
  /** What a kelvin of warming does to the pressure [Pa]. */
  readonly pressurePerKelvin: Band<'pressure'>;
  /** Situations to ask `noticesFor` with before anybody pumps. */
  readonly situations: readonly Situation[];
}

/** A {@link PressureTestEvaluation} with its findings. */
export interface PressureTestResult extends PressureTestEvaluation {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link PressureTestEvaluation}. */
export const pressureTestEvaluationShape: Shape<Omit<PressureTestEvaluation, 'situations'>> = {
  verdict: ['tight', 'leaking', 'cannot be told'],
  falseAlarm: 'fraction',
  missedLeak: 'fraction',
  leakToFind: 'pressure',
  leakPerHour: /* @__PURE__ */ bandShape('pressure'),
  leastLeakTold: 'pressure',
  creepFall: /* @__PURE__ */ bandShape('pressure'),
  creepScatter: 'pressure',
  leakScatter: 'pressure',
  pressurePerKelvin: /* @__PURE__ */ bandShape('pressure'),
};

/** Share of the first reading that a leak to be found takes in an hour; a fifth of what the hold of `astmF2164` lets pass. */
const LEAK_SHARE = 0.01;
/** Chance of being wrong that a verdict may have, either way [1]. */
const ERROR = 0.05;

/**
 * Tells a leak from the creep of polyethylene in the readings of a pressure test with water, and says with what chance of error.
 *
 * A wall under load creeps: pressure falls fast, then slower and slower, along the logarithm or a small power of time, without any leak. A leak lets it
 * fall by the hour. Both are fitted together, twice, with the form of creep that flattens soonest and the one that flattens latest; a verdict has to hold
 * for both. Where it does not, the readings do not tell: read on, since time parts the two, not more readings. Warming by a kelvin moves the pressure as
 * a leak does: read the temperature of the pipe with the pressure. Where it was not read, a drift with a standard error of 0.1 K an hour counts among the
 * errors, so that only a small fall is called tight. Nor is tight what rises, does not move at all, or follows neither form of creep. What is tight here may still weep at a joint: look at
 * each one while it is under pressure, from a distance.
 *
 * Not for the hold after pressure was let down, in which the wall recovers and the pressure may rise by itself: its rule has a limit of its own, in `TEST_RULES`.
 *
 * **Water, never air or gas**: see {@link planPressureTest} for the energy in each, and show `noticesFor(result.situations)` before anybody pumps.
 *
 * @param test - see {@link PressureTest}
 * @returns verdict, chances of error [1], leak and creep [Pa], and findings
 * @throws InputError for a value out of its range, readings out of order, or a last time under three times the first
 * @remarks Sources: `findley1987` for creep by a small power of time, `decaySlopes` for the straight line of the logarithms and the share of the time of
 * loading; limits by Student's distribution. Invariants tested by Monte Carlo over eight laws of creep, none of them fitted here but the first: a tight loop is called leaking, and one
 * with the leak to find tight, in no more than 5 % of 400 tests each; pressures in another unit, leak and gauge with them, give the same verdict.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, diameterMillimetres, hours, kilopascals } = await import('../units/index.js');
 * const pipe = { outsideDiameter: diameterMillimetres(32), insideDiameter: diameterMillimetres(26) };
 * const test = (leakPerHour: number) =>
 *   evaluatePressureTest({
 *     readings: Array.from({ length: 24 }, (_, at) => 0.25 * (at + 1)).map((time) => ({
 *       time: hours(time),
 *       pressure: kilopascals(690 * time ** -0.05 - leakPerHour * time),
 *       temperature: celsius(12),
 *     })),
 *     gaugeError: kilopascals(1),
 *     pipe,
 *   });
 * expect(test(0).verdict).toBe('tight');
 * expect(test(14).verdict).toBe('leaking');
 * // Less than the 7 kPa an hour that were to be found: a smaller one has to be asked for, and takes longer.
 * expect(test(5).verdict).toBe('tight');
 * ```
 */
export function evaluatePressureTest(test: PressureTest): PressureTestResult {
  const { series, perKelvin } = pressureSeries(test);
  const { leakToFind = (LEAK_SHARE * (series.pressures[0] ?? 0)) as Pressure } = test;
  demand('leakToFind', 'pressure', leakToFind, { atLeast: 0.1, atMost: 1e7 });
  const fits = [fitDecay('early', series), fitDecay('late', series)];
  const freedom = series.times.length - 3;
  const reach = studentQuantile(1 - ERROR, freedom);
  // A verdict has to hold for either form of creep, for the true one lies between them.
  const falseAlarm = Math.max(...fits.map(({ leak, leakError }) => 1 - studentBelow(leak / leakError, freedom)));
  const missedLeak = Math.max(...fits.map(({ leak, leakError }) => studentBelow((leak - leakToFind) / leakError, freedom)));
  const low = Math.min(...fits.map(({ leak, leakError }) => leak - reach * leakError));
  const high = Math.max(...fits.map(({ leak, leakError }) => leak + reach * leakError));
  const [leaks, creeps] = [fits.map(({ leak }) => leak), fits.map(({ creep }) => creep)];
  const better = (of: (fit: DecayFit) => number): number => Math.min(...fits.map(of));
  const doubts = doubtsOf({ test, fits, high, leakToFind });
  const verdict = falseAlarm <= ERROR ? 'leaking' : missedLeak <= ERROR && doubts.length === 0 ? 'tight' : 'cannot be told';
  const result: PressureTestEvaluation = {
    verdict,
    falseAlarm: falseAlarm as Fraction,
    missedLeak: missedLeak as Fraction,
    leakToFind,
    leakPerHour: { low, estimate: mean(leaks), high, coverage: 1 - 2 * ERROR } as Band<'pressure'>,
    leastLeakTold: (high - low) as Pressure,
    creepFall: { low: Math.min(...creeps), estimate: mean(creeps), high: Math.max(...creeps), coverage: 1 - 2 * ERROR } as Band<'pressure'>,
    creepScatter: better(({ creepScatter }) => creepScatter) as Pressure,
    leakScatter: better(({ leakScatter }) => leakScatter) as Pressure,
    pressurePerKelvin: perKelvin,
    situations: ['pressure-test'],
  };
  const told = doubts.length > 0 && verdict !== 'leaking' ? [] : verdictFinding(result);
  return { ...result, findings: [...told, ...doubts, ...ratingFinding(test), ...warmingFinding(result, series.warming === undefined)] };
}

function verdictFinding({ verdict, falseAlarm, missedLeak, leakPerHour, leakToFind, leastLeakTold }: PressureTestEvaluation): readonly Finding[] {
  const source = 'findley1987';
  if (verdict === 'leaking') {
    const values = { leakPerHour: leakPerHour.estimate, leastLeak: leakPerHour.low, falseAlarm };
    return [{ code: 'pressure-test-leak', level: 'stop', values, source }];
  }
  if (verdict === 'tight') return [{ code: 'pressure-test-tight', level: 'note', values: { leakToFind, missedLeak }, source }];
  return [{ code: 'pressure-test-open', level: 'warning', values: { leastLeakTold, leakToFind, falseAlarm, missedLeak }, source }];
}

/** What a drift of temperature that nobody read could pass for. */
function warmingFinding({ leakToFind, pressurePerKelvin }: PressureTestEvaluation, unread: boolean): readonly Finding[] {
  if (!unread) return [];
  const drift = (leakToFind / Math.max(1, Math.abs(pressurePerKelvin.low))) as TemperatureDifference;
  return [{ code: 'pressure-test-temperature-unread', level: 'warning', values: { drift, leakToFind }, source: 'polyethyleneGive' }];
}

const mean = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;
