import { demand } from '../errors/index.js';
import type { Mass, Shape, Volume } from '../units/index.js';
import { type Concentrate, demandConcentrate, refusedConcentrate } from './concentrate.js';
import { demandFluidChoice, type FluidChoice, type OfAnyFluid } from './fluids.js';
import { densityOf, volumeFromMassFraction } from './volume-share.js';
import { WATER } from './water.data.js';

/** A loop to be filled. */
export interface AntifreezeFill extends FluidChoice {
  /** Volume of the whole loop: pipes, headers, hoses, heat pump [m3]. */
  readonly loopVolume: Volume;
  /** What is in the drum; undiluted antifreeze when left out. */
  readonly concentrate?: Concentrate;
}

/** What to pour for a loop; all volumes at 20 °C. */
export interface AntifreezeCharge {
  /** Concentrate to pour [m3]. */
  readonly concentrateVolume: Volume;
  /** Its mass [kg]. */
  readonly concentrateMass: Mass;
  /** Water to add [m3]. */
  readonly waterVolume: Volume;
  /** Its mass [kg]. */
  readonly waterMass: Mass;
  /** Finished solution [m3]. */
  readonly solutionVolume: Volume;
  /** Its mass [kg]. */
  readonly solutionMass: Mass;
  /** How much the parts shrink on mixing: concentrate and water together less the finished solution [m3]. */
  readonly contraction: Volume;
}

/** Greatest loop computed with [m3]; a bound against slips of the unit, far outside any house. */
export const GREATEST_LOOP = 10_000;

/** Shape of {@link AntifreezeCharge}. */
export const antifreezeChargeShape: Shape<AntifreezeCharge> = {
  concentrateVolume: 'volume',
  concentrateMass: 'mass',
  waterVolume: 'volume',
  waterMass: 'mass',
  solutionVolume: 'volume',
  solutionMass: 'mass',
  contraction: 'volume',
};

/**
 * How much concentrate and water fill a loop.
 *
 * A balance of mass, with volumes as poured at 20 °C; filling at 10 °C takes about 0.4 % more. The loop volume from
 * bores is good to a few per cent: meter what really goes in.
 *
 * @param fill - fluid, mass fraction [kg/kg], loop volume [m3], and what the drum holds if it is not undiluted antifreeze
 * @returns volumes [m3] and masses [kg] of concentrate, water and solution
 * @throws InputError when a number is impossible, or the concentrate is weaker than the mixture or lighter than the antifreeze in it
 * @remarks
 * Source: `melinder2010` for the density of the solution. Checked against a table of 100 L mixtures worked out by hand from the same densities.
 *
 * Invariants: masses of the parts add up to that of the solution; everything scales with the loop volume.
 * @example
 * ```ts @import.meta.vitest
 * const { litres, volumePercent } = await import('../units/index.js');
 * const { massFromVolumeFraction } = await import('./volume-share.js');
 * const massFraction = massFromVolumeFraction({ fluid: 'propylene-glycol', volumeFraction: volumePercent(25) });
 * const charge = antifreezeCharge({ fluid: 'propylene-glycol', massFraction, loopVolume: litres(400) });
 * expect(litres.of(charge.concentrateVolume)).toBeCloseTo(100, 1);
 * expect(litres.of(charge.waterVolume)).toBeCloseTo(304.8, 1);
 * ```
 */
export function antifreezeCharge(fill: OfAnyFluid<AntifreezeFill>): AntifreezeCharge {
  const record = demandFluidChoice(fill);
  const { loopVolume, massFraction } = fill;
  demand('loopVolume', 'volume', loopVolume, { above: 0, atMost: GREATEST_LOOP });
  const concentrate = demandConcentrate(record, fill.concentrate);
  const solutionMass = loopVolume * densityOf(record, massFraction);
  const concentrateVolume = (loopVolume * volumeFromMassFraction(fill)) / concentrate.strength;
  const concentrateMass = concentrateVolume * concentrate.density;
  const waterMass = solutionMass - concentrateMass;
  if (waterMass < 0) throw refusedConcentrate('strength', concentrate.strength, 'a concentrate that is stronger than the mixture');
  const waterVolume = waterMass / WATER.pureDensity;
  const contraction = concentrateVolume + waterVolume - loopVolume;
  return { concentrateVolume, concentrateMass, waterVolume, waterMass, solutionVolume: loopVolume, solutionMass, contraction } as AntifreezeCharge;
}
