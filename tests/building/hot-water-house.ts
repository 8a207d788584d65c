import type { HotWaterInput } from '../../src/building/index.js';
import { celsius, dayOfYear, kelvinDifference, litresPerDay, watts } from '../../src/units/index.js';

/** Four people, 50 L each, cold water of 10 ± 5 °C; invented. */
export const household: HotWaterInput = {
  draw: { by: 'persons', persons: 4, perPerson: litresPerDay(50) },
  hotTemperature: celsius(50),
  coldWater: { from: 'wave', mean: celsius(10), amplitude: kelvinDifference(5), coldestDay: dayOfYear(45) },
  tankLoss: watts(60),
  circulationLoss: watts(15),
};

/** The same with water that is as cold all year. */
export const even = (cold: number): HotWaterInput => ({
  ...household,
  coldWater: { from: 'months', monthlyMeans: Array.from({ length: 12 }, () => celsius(cold)) },
});
