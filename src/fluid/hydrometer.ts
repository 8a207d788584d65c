import { demand } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { Density, MassFraction, Ratio, Shape, Temperature } from '../units/index.js';
import { demandFluid, demandFluidChoice, type Fluid, fluidChoiceShape, type OfAnyFluid } from './fluids.js';
import { demandLiquidAt, type FluidCondition } from './properties.js';
import { demandMeasuringTemperature, readConcentration, type ReadConcentration } from './read-concentration.js';
import { densityOf } from './volume-share.js';
import { WATER } from './water.data.js';

/** A mixture whose reading is expected. */
export interface HydrometerSample extends FluidCondition {
  /** Temperature at which the hydrometer reads 1 in water; 20 °C when left out, 15.6 °C (60 °F) is common [degC]. */
  readonly calibratedAt?: Temperature;
}

/** Shape of {@link HydrometerSample}. */
export const hydrometerSampleShape: Shape<HydrometerSample> = /* @__PURE__ */ joinedShape(fluidChoiceShape, {
  temperature: 'temperature',
  calibratedAt: { optional: 'temperature' },
});

/** What a hydrometer should show. */
export interface HydrometerReading {
  /** Density of the mixture at its temperature [kg/m3]. */
  readonly density: Density;
  /** The same over the density of water at the calibration temperature: what the stem shows [1]. */
  readonly specificGravity: Ratio;
}

/** Shape of {@link HydrometerReading}. */
export const hydrometerReadingShape: Shape<HydrometerReading> = { density: 'density', specificGravity: 'ratio' };

const ROOM = 20 as Temperature;

/**
 * What a hydrometer should show in a mixture at the temperature of the sample.
 *
 * Right for alcohols; glycols are better read with a refractometer, since one per cent by volume is only 0.001 of specific gravity.
 * The glass is taken not to expand, which costs 0.0003 at ten kelvin off its calibration.
 *
 * @param sample - fluid, mass fraction of antifreeze [kg/kg], temperature of the sample and of the calibration [degC]
 * @returns density and specific gravity
 * @throws InputError as `fluidProperties` does, and when the calibration is outside 0 to 60 °C
 * @remarks Source: `melinder2010`, `iapwsWater`. Checked against tables of specific gravity of `lange1999` to the digits printed.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, massPercent } = await import('../units/index.js');
 * const { METHANOL } = await import('./methanol.data.js');
 * const { specificGravity } = expectedHydrometer({ fluid: METHANOL, massFraction: massPercent(16.3), temperature: celsius(20) });
 * expect(specificGravity).toBeCloseTo(0.974, 3);
 * ```
 */
export function expectedHydrometer(sample: OfAnyFluid<HydrometerSample>): HydrometerReading {
  const { massFraction, temperature, calibratedAt = ROOM } = sample;
  const record = demandFluidChoice(sample);
  demandLiquidAt(record, massFraction, temperature, 'temperature');
  const density = densityOf(record, massFraction, temperature);
  return { density, specificGravity: density / calibrationDensity(calibratedAt) } as HydrometerReading;
}

/** A reading of a hydrometer. */
export interface HydrometerRead {
  /** What is in the loop. */
  readonly fluid: Fluid;
  /** Temperature of the sample [degC]. */
  readonly temperature: Temperature;
  /** What the stem shows [1]. */
  readonly specificGravity: Ratio;
  /** Temperature at which the hydrometer reads 1 in water; 20 °C when left out, 15.6 °C (60 °F) is common [degC]. */
  readonly calibratedAt?: Temperature;
  /** How far the reading may be off; 0.001, half of a usual division, when left out [1]. */
  readonly gravityError?: Ratio;
}

/** What the reading means. */
export interface HydrometerMeaning extends ReadConcentration {
  /**
   * Mass share if the product is inhibited and so as much heavier as density is uncertain: the least that a glycol's reading vouches for.
   * Absent for alcohols and salts; 0 when the reading could be inhibited water [kg/kg].
   */
  readonly ifInhibited?: MassFraction;
}

/** How well the fits give the specific gravity of a pure mixture. */
const FIT_ERROR = 0.0005;

/**
 * What a hydrometer's reading says of concentration and protection.
 *
 * @param read - fluid, temperature of the sample [degC], reading, calibration [degC], error of the reading
 * @returns concentration and freezing point, each as a band
 * @throws InputError when a number is impossible or no mixture gives the reading; a sample below 1 °C is refused
 * @remarks
 * Fit good to 0.0005 (`lange1999`), added to the error of the reading. Inhibitors make glycols 0.3 to 0.5 % heavier
 * (`ashrae2001Coolants`), five times the error of a reading: use the product's own table, or a refractometer.
 *
 * Invariant: gives back the concentration that {@link expectedHydrometer} was asked with.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, massPercent, ratio } = await import('../units/index.js');
 * const { ETHANOL } = await import('./ethanol.data.js');
 * const { massFraction } = fromHydrometer({ fluid: ETHANOL, temperature: celsius(20), specificGravity: ratio(0.9702) });
 * expect(massPercent.of(massFraction.estimate)).toBeCloseTo(20.3, 1);
 * expect(massPercent.of(massFraction.low)).toBeCloseTo(19.2, 1);
 * ```
 */
export function fromHydrometer(read: OfAnyFluid<HydrometerRead>): HydrometerMeaning {
  const { fluid, temperature, specificGravity, calibratedAt = ROOM, gravityError = 0.001 as Ratio } = read;
  const record = demandFluid(fluid);
  demandMeasuringTemperature(record, temperature);
  demand('specificGravity', 'ratio', specificGravity, { above: 0.5, below: 2 });
  demand('gravityError', 'ratio', gravityError, { atLeast: 0, atMost: 0.05 });
  const water = calibrationDensity(calibratedAt);
  const readingOf = (massFraction: number): number => densityOf(record, massFraction, temperature) / water;
  const meaning = (reading: number): ReadConcentration =>
    readConcentration(record, { argument: 'specificGravity', reading, error: gravityError + FIT_ERROR, readingOf });
  const plain = meaning(specificGravity);
  if (record.inhibitorFloor === 0) return plain;
  const lightened = specificGravity / (1 + record.uncertainty.density);
  return { ...plain, ifInhibited: lightened <= readingOf(0) ? (0 as MassFraction) : meaning(lightened).massFraction.estimate };
}

function calibrationDensity(calibratedAt: Temperature): number {
  demand('calibratedAt', 'temperature', calibratedAt, { atLeast: 0, atMost: WATER.highestTemperature });
  return densityOf(WATER, 0, calibratedAt);
}
