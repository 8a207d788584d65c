import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Pressure } from '../units/index.js';
import type { DecayFit } from './decay-fit.js';
import type { PressureTest } from './evaluate-pressure-test.js';
import { overRating } from './over-rating.js';

/** Gauge errors that chance hardly ever makes of a scatter or a rise. */
const BEYOND_CHANCE = 3;
/** Design stress of the strongest polyethylene with water in the cold, 1000 psi [Pa]. */
const STRONGEST = 6_894_757.293168361;

interface FittedTest {
  readonly test: PressureTest;
  readonly fits: readonly DecayFit[];
  /** Upper limit of the leak [Pa/h]. */
  readonly high: number;
  readonly leakToFind: Pressure;
}

/** What keeps readings from being called tight, whatever the fit of creep and leak says. */
export function doubtsOf({ test, fits, high, leakToFind }: FittedTest): readonly Finding[] {
  const { gaugeError, readings } = test;
  const pressures = readings.map(({ pressure }) => pressure);
  const range = (Math.max(...pressures) - Math.min(...pressures)) as Pressure;
  // Readings scatter by their own error, and the wall creeps on top: less than one error between the least and the greatest is no reading.
  if (range < gaugeError) return [{ code: 'pressure-test-still', level: 'warning', values: { range, gaugeError }, source: 'common practice' }];
  const findings: Finding[] = [];
  // Against creep by more than the leak to find, or outright, which creep never does: something else is at work, which could hide a leak.
  const rise = Math.min(...fits.map(({ fall }) => -fall));
  const outright = rise > BEYOND_CHANCE * gaugeError;
  if (high < -leakToFind || outright) {
    const hours = ((readings.at(-1)?.time ?? 0) - (readings[0]?.time ?? 0)) / 3600;
    const againstCreep = fits.reduce((sum, { leak }) => sum - leak / fits.length, 0);
    const risePerHour = (outright ? rise / hours : againstCreep) as Pressure;
    findings.push({ code: 'pressure-test-rising', level: 'warning', values: { risePerHour, leakToFind }, source: 'findley1987' });
  }
  const scatter = Math.min(...fits.map(({ leakScatter }) => leakScatter)) as Pressure;
  if (scatter > BEYOND_CHANCE * gaugeError) {
    findings.push({ code: 'pressure-test-no-creep', level: 'warning', values: { scatter, gaugeError }, source: 'findley1987' });
  }
  return findings;
}

/** What to say of pressures above what the pipe bears. */
export function ratingFinding({ readings, pipe, rating: given }: PressureTest): readonly Finding[] {
  if (given !== undefined) demand('rating', 'pressure', given, { atLeast: 1e4, atMost: 1e7 });
  const { outsideDiameter, insideDiameter } = pipe;
  const wall = (outsideDiameter - insideDiameter) / 2;
  const rating = given ?? (((2 * STRONGEST * wall) / (outsideDiameter - wall)) as Pressure);
  return overRating(Math.max(...readings.map(({ pressure }) => pressure)) as Pressure, rating);
}
