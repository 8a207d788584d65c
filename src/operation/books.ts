import { type ModeLedger, ledgerOf } from './ledger.js';
import type { Course, HotWaterDuty, SimulatedDuty } from './simulation.js';

/** What each service did over some time. */
export interface Books {
  readonly heating: ModeLedger;
  readonly cooling: ModeLedger;
  /** Where hot water is asked for. */
  readonly hotWater?: ModeLedger;
}

/**
 * The ledgers of a course, those of the house without what is for hot water.
 *
 * @param duty - loads of the steps
 * @param course - of the steps
 * @param step - length of a step [s]
 * @returns the ledgers from one step to the one before another
 */
export function booksOf(duty: SimulatedDuty, course: Course, step: number): (from: number, to: number) => Books {
  const hotDuty = hotWaterOf(duty);
  const { hotWater } = course;
  if (hotWater === undefined || hotDuty === undefined) {
    return (from, to) => ({
      heating: ledgerOf('heating', duty.loads, course, step, from, to),
      cooling: ledgerOf('cooling', duty.loads, course, step, from, to),
    });
  }
  const less = (all: Float64Array, part: Float64Array): Float64Array => all.map((each, index) => each - (part[index] ?? 0));
  const house: Course = {
    ...course,
    runShares: less(course.runShares, hotWater.runShares),
    fullHeatShares: less(course.fullHeatShares, hotWater.runShares),
    groundHeats: less(course.groundHeats, hotWater.groundHeats),
    unitPowers: less(course.unitPowers, hotWater.unitPowers),
    pumpPowers: less(course.pumpPowers, hotWater.pumpPowers),
  };
  const hot: Course = { ...course, ...hotWater, fullHeatShares: hotWater.runShares };
  return (from, to) => ({
    heating: ledgerOf('heating', duty.loads, house, step, from, to),
    cooling: ledgerOf('cooling', duty.loads, house, step, from, to),
    hotWater: ledgerOf('heating', hotDuty.loads, hot, step, from, to),
  });
}

/** Hot water that a duty asks for. */
export function hotWaterOf(duty: SimulatedDuty): HotWaterDuty | undefined {
  return duty.from === 'building' ? duty.hotWater : undefined;
}

/** The loads that say whether the fluid of a step is judged by the limits of heating or of cooling: hot water alone counts as heating. */
export function judgedLoads(duty: SimulatedDuty): ArrayLike<number> {
  const hot = hotWaterOf(duty)?.loads;
  if (hot === undefined) return duty.loads;
  return Float64Array.from(duty.loads, (load, index) => (load === 0 ? (hot[index] ?? 0) : load));
}
