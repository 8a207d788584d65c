import { demand, InputError } from '../errors/index.js';
import { moistureShape, type Moisture } from '../states/index.js';
import type { Density, DryBasisMoisture, MassFraction, Shape, VolumeFraction } from '../units/index.js';
import { densityHint } from './likely-cause.js';
import { dryBasis } from './moisture.js';
import { DEFAULT_PARTICLE_DENSITY } from './particle-density.js';
import { hasRoom } from './room-for-water.js';

/** A soil with stones in it: either as a whole, or its fine earth alone. */
export interface StonySoil {
  /** Dry density, of the whole or of the fine earth, 20 to 2800 [kg/m3]. */
  readonly dryDensity: Density;
  /** Water content with its basis, of the whole or of the fine earth. */
  readonly moisture: Moisture;
  /** Dry mass of the particles above 2 mm (or another sieve) over the dry mass of the whole, 0 to 0.6 [kg/kg]. */
  readonly stoneShare: MassFraction;
  /** Density of the stones themselves, 1000 to 5000; 2650 when left out [kg/m3]. */
  readonly stoneDensity?: Density;
  /** Water in and on the stones over their dry mass, 0 to 0.5; 0.01 when left out [kg/kg]. */
  readonly stoneMoisture?: DryBasisMoisture;
}

/** Shape of {@link StonySoil}. */
export const stonySoilShape: Shape<StonySoil> = {
  dryDensity: 'density',
  moisture: moistureShape,
  stoneShare: 'mass fraction',
  stoneDensity: { optional: 'density' },
  stoneMoisture: { optional: 'moisture on dry basis' },
};

/** What is left when stones are taken out of a soil, or what comes of putting them in. */
export interface StoneCorrection {
  /** Dry density [kg/m3]. */
  readonly dryDensity: Density;
  /** Water over solids [kg/kg]. */
  readonly moisture: DryBasisMoisture;
  /** Volume of the stones in the volume of the whole soil [m3/m3]. */
  readonly stoneVolume: VolumeFraction;
}

/** Shape of {@link StoneCorrection}. */
export const stoneCorrectionShape: Shape<StoneCorrection> = {
  dryDensity: 'density',
  moisture: 'moisture on dry basis',
  stoneVolume: 'volume fraction',
};

/**
 * Density and water content of the fine earth between the stones of a soil that was measured as a whole.
 *
 * For stones that lie apart in fine earth which fills all between them, up to some 40 % by mass.
 *
 * @param soil - dry density [kg/m3] and moisture of the whole, share [kg/kg], density and water of the stones
 * @returns dry density [kg/m3] and moisture of the fine earth [kg/kg], and the volume of the stones [m3/m3]
 * @throws InputError when a number is impossible, or the stones leave no room for the rest
 * @remarks
 * w = (W − p w of stones) / (1 − p), ρ = (1 − p) / (1/P − p/ρ of stones), with p the share of the stones and W, P of the whole. Source:
 * `astmD4718`. Checked against masses and volumes added up. Invariant: inverse of {@link wholeSoil}.
 * @example
 * ```ts @import.meta.vitest
 * const { dryBasisPercent, kilogramsPerCubicMetre, massPercent } = await import('../units/index.js');
 * const whole = { dryDensity: kilogramsPerCubicMetre(1900), moisture: { basis: 'dry', value: dryBasisPercent(10) } } as const;
 * expect(fineEarth({ ...whole, stoneShare: massPercent(30) }).moisture).toBeCloseTo(0.1386, 4);
 * ```
 */
export function fineEarth(soil: StonySoil): StoneCorrection {
  const { dryDensity, stoneShare, stoneDensity, stoneMoisture, water } = read(soil);
  const moisture = (water - stoneShare * stoneMoisture) / (1 - stoneShare);
  if (moisture < 0) throw tooMuch(stoneShare, 'water on the stones that leaves some for the rest', 'the stones may be drier than was said');
  const room = 1 / dryDensity - stoneShare / stoneDensity;
  const density = (1 - stoneShare) / room;
  if (!(room > 0 && hasRoom({ dryDensity: density, water: moisture, particleDensity: DEFAULT_PARTICLE_DENSITY }))) {
    throw tooMuch(
      stoneShare,
      'stones that leave room for the rest and its water',
      'the density of the whole may be the moist one, or that of the fine earth',
    );
  }
  return { dryDensity: density, moisture, stoneVolume: (stoneShare * dryDensity) / stoneDensity } as StoneCorrection;
}

/**
 * Density and water content of a soil as a whole from those of the fine earth between its stones.
 *
 * @param soil - dry density [kg/m3] and moisture of the fine earth, share [kg/kg], density and water of the stones
 * @returns dry density [kg/m3] and moisture of the whole [kg/kg], and the volume of the stones [m3/m3]
 * @throws InputError when a number is impossible
 * @remarks
 * W = (1 − p) w + p w of stones, 1/P = (1 − p)/ρ + p/ρ of stones. Source: `astmD4718`. Invariant: inverse of {@link fineEarth}.
 * @example
 * ```ts @import.meta.vitest
 * const { dryBasisPercent, kilogramsPerCubicMetre, massPercent } = await import('../units/index.js');
 * const fine = { dryDensity: kilogramsPerCubicMetre(1600), moisture: { basis: 'dry', value: dryBasisPercent(15) } } as const;
 * expect(wholeSoil({ ...fine, stoneShare: massPercent(30) }).dryDensity).toBeCloseTo(1816, 0);
 * ```
 */
export function wholeSoil(soil: StonySoil): StoneCorrection {
  const { dryDensity, stoneShare, stoneDensity, stoneMoisture, water } = read(soil);
  const density = 1 / ((1 - stoneShare) / dryDensity + stoneShare / stoneDensity);
  const moisture = (1 - stoneShare) * water + stoneShare * stoneMoisture;
  return { dryDensity: density, moisture, stoneVolume: (stoneShare * density) / stoneDensity } as StoneCorrection;
}

function read(soil: StonySoil): Required<Omit<StonySoil, 'moisture'>> & { readonly water: DryBasisMoisture } {
  const { dryDensity, moisture, stoneShare, stoneDensity = DEFAULT_PARTICLE_DENSITY as Density, stoneMoisture = 0.01 as DryBasisMoisture } = soil;
  demand('dryDensity', 'density', dryDensity, { atLeast: 20, atMost: 2800 }, densityHint(dryDensity));
  const shareHint = stoneShare > 1 ? 'per cent given as a share?' : 'so many stones touch, and fine earth no longer fills between them';
  demand('stoneShare', 'mass fraction', stoneShare, { atLeast: 0, atMost: 0.6 }, shareHint);
  demand('stoneDensity', 'density', stoneDensity, { atLeast: 1000, atMost: 5000 }, 'that of the stones themselves, not of a heap of them');
  demand('stoneMoisture', 'moisture on dry basis', stoneMoisture, { atLeast: 0, atMost: 0.5 });
  return { dryDensity, stoneShare, stoneDensity, stoneMoisture, water: dryBasis(moisture) };
}

function tooMuch(stoneShare: MassFraction, allowed: string, hint: string): InputError {
  return new InputError({ code: 'impossible', argument: 'stoneShare', value: { kind: 'mass fraction', value: stoneShare }, allowed, hint });
}
