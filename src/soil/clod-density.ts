import { demand, InputError } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { Density, Mass, Shape } from '../units/index.js';
import { type DugSoil, dugSoilShape, type InPlaceDensityResult } from './dug-soil.js';
import { demandMass, inPlaceDensity, readDug } from './in-place-density.js';
import { densityHint, likelyCauses, MASS_SLIPS, unitSlips, type Slip } from './likely-cause.js';
import type { Take } from './propagated-error.js';

/** An intact lump of soil, sealed in wax or film and weighed in air and in water. */
export interface CoatedClod extends DugSoil {
  /** The clod with its wax or film, weighed in air [kg]. */
  readonly coatedMass: Mass;
  /** The same hanging in water, as the balance shows it [kg]. */
  readonly coatedMassInWater: Mass;
  /** Density of the wax or film, 700 to 1500; 900, paraffin, when left out [kg/m3]. */
  readonly coatingDensity?: Density;
  /** Density of the water it hangs in, 950 to 1050; 998 when left out [kg/m3]. */
  readonly waterDensity?: Density;
}

/** Shape of {@link CoatedClod}. */
export const coatedClodShape: Shape<CoatedClod> = /* @__PURE__ */ joinedShape(dugSoilShape, {
  coatedMass: 'mass',
  coatedMassInWater: 'mass',
  coatingDensity: { optional: 'density' },
  waterDensity: { optional: 'density' },
});

/** Standard errors of the densities of the coating and the water, as shares; source `common practice`. */
const COATING_ERROR = 0.02;
const WATER_ERROR = 0.002;

/**
 * Dry density of an intact clod from its weights in air and in water, sealed in wax or film.
 *
 * A clod leaves out the cracks between the clods, so that the ground as a whole lies a few per cent looser.
 *
 * @param clod - weighings in air and in water [kg], moisture, densities of coating and water [kg/m3]
 * @returns densities [kg/m3], volume of the clod [m3], saturation and errors [1], with findings
 * @throws InputError when a reading is impossible, or all together are; the hint names the slip that would explain them
 * @remarks
 * V = (coated − in water) / ρ of water − (coated − moist) / ρ of coating; ρd = m / (1 + w) / V. Source: `soilMechanicsTexts`. Checked against
 * published worked tests, the error against a Monte Carlo.
 *
 * Invariant: a thicker coat, weighed as it is, changes nothing.
 * @example
 * ```ts @import.meta.vitest
 * const { dryBasisPercent, grams } = await import('../units/index.js');
 * const clod = clodDensity({
 *   moistMass: grams(683),
 *   moisture: { basis: 'dry', value: dryBasisPercent(17) },
 *   coatedMass: grams(690.6),
 *   coatedMassInWater: grams(341),
 * });
 * expect(clod.moistDensity).toBeCloseTo(1998, 0);
 * ```
 */
export function clodDensity(clod: CoatedClod): InPlaceDensityResult<'clod'> {
  const { coatedMass, coatedMassInWater, coatingDensity = 900 as Density, waterDensity = 998 as Density } = clod;
  const readings = readDug(clod);
  const { moist, tare } = readings;
  demandMass('coatedMass', coatedMass);
  demand('coatedMassInWater', 'mass', coatedMassInWater, { atLeast: 0, atMost: 1000 });
  demand('coatingDensity', 'density', coatingDensity, { atLeast: 700, atMost: 1500 }, densityHint(coatingDensity));
  demand('waterDensity', 'density', waterDensity, { atLeast: 950, atMost: 1050 }, densityHint(waterDensity));
  const soil = moist.value - tare.value;
  const size = (coated: number, inWater: number, bare: number): number => (coated - inWater) / waterDensity - (coated - bare) / coatingDensity;
  if (coatedMass < soil || size(coatedMass, coatedMassInWater, soil) <= 0) refuseClod(clod, soil, size);
  const inAir = { value: coatedMass, error: readings.balanceError };
  const inWater = { value: coatedMassInWater, error: readings.balanceError };
  const coating = { value: coatingDensity, error: coatingDensity * COATING_ERROR };
  const water = { value: waterDensity, error: waterDensity * WATER_ERROR };
  const of = (take: Take): number => (take(inAir) - take(inWater)) / take(water) - (take(inAir) - (take(moist) - take(tare))) / take(coating);
  const slips: readonly Slip<number>[] = [
    { cause: 'what the water rose by may have been given as the mass in water', undone: size(coatedMass, coatedMass - coatedMassInWater, soil) },
    ...unitSlips('the mass in water', coatedMassInWater, MASS_SLIPS, (mass) => size(coatedMass, mass, soil)),
    ...unitSlips('the coated mass', coatedMass, MASS_SLIPS, (mass) => size(mass, coatedMassInWater, soil)),
  ];
  return inPlaceDensity('clod', clod, readings, { of, readings: [inAir, inWater, coating, water], slips });
}

/** Refuses weighings that leave the clod no volume or its coat no mass; the hint tells which mistake would explain them. */
function refuseClod(
  { coatedMass, coatedMassInWater }: CoatedClod,
  soil: number,
  size: (coated: number, inWater: number, bare: number) => number,
): never {
  interface Weighed {
    readonly coated: number;
    readonly inWater: number;
    readonly bare: number;
  }
  const given: Weighed = { coated: coatedMass, inWater: coatedMassInWater, bare: soil };
  const slips: readonly Slip<Weighed>[] = [
    { cause: 'the coated and the bare clod may be interchanged', undone: { ...given, coated: soil, bare: coatedMass } },
    { cause: 'the weights in air and in water may be interchanged', undone: { ...given, coated: coatedMassInWater, inWater: coatedMass } },
    ...unitSlips('the coated mass', coatedMass, MASS_SLIPS, (mass) => ({ ...given, coated: mass })),
    ...unitSlips('the mass in water', coatedMassInWater, MASS_SLIPS, (mass) => ({ ...given, inWater: mass })),
  ];
  const possible = ({ coated, inWater, bare }: Weighed): boolean => {
    const density = bare / size(coated, inWater, bare);
    return coated >= bare && coated < 1.5 * bare && density > 1000 && density < 2600;
  };
  throw new InputError({
    code: 'impossible',
    argument: 'coatedMass',
    value: { kind: 'mass', value: coatedMass },
    allowed: `at least the bare clod, ${soil.toPrecision(4)} kg, and enough more than in water, ${coatedMassInWater.toPrecision(4)} kg, for its volume`,
    hint: likelyCauses(slips, possible) ?? 'the clod may have been weighed with its container, or taken up water',
  });
}
