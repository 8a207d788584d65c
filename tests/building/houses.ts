import { energySignature, type EnergySignature } from '../../src/building/index.js';
import { celsius, kelvinDifference, kilowatts, type Temperature, type TemperatureDifference } from '../../src/units/index.js';

/** A heating line of 12 kW at −15 °C from 16 °C down. */
export const heating: EnergySignature = energySignature({
  mode: 'heating',
  form: 'anchored at design',
  designLoad: kilowatts(12),
  designOutdoor: celsius(-15),
  indoor: celsius(21),
  balancePoint: celsius(16),
});

/** A cooling line of 7 kW at 33 °C from 20 °C up. */
export const cooling: EnergySignature = energySignature({
  mode: 'cooling',
  designLoad: kilowatts(7),
  designOutdoor: celsius(33),
  indoor: celsius(25),
  balancePoint: celsius(20),
});

/** Monthly means of a continental climate [degC]. */
export const continental: readonly Temperature[] = [-6, -4, 2, 8, 14, 19, 21, 20, 16, 10, 3, -3].map((mean) => celsius(mean));

/** Monthly means by a mild sea [degC]. */
export const maritime: readonly Temperature[] = [5, 5, 6, 8, 11, 13, 15, 15, 13, 10, 7, 5].map((mean) => celsius(mean));

/** The same spread in every month. */
export const evenSpread = (spread: number): readonly TemperatureDifference[] => continental.map(() => kelvinDifference(spread));
