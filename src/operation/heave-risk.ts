import { demand, demandChoice } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Source } from '../references/index.js';
import { TEXTURE_CLASSES, type TextureClass } from '../soil/index.js';
import type { Fraction, Length, Shape, VolumetricWater } from '../units/index.js';
import { FEW_FINES, FROST_SUSCEPTIBILITIES, type FrostSusceptibility, SUSCEPTIBILITY } from './heave.data.js';

/** How much frost may lift the ground over the pipes. */
export type HeaveClass = (typeof HEAVE_CLASSES)[number];

/** Every class of heave, the least first. */
const HEAVE_CLASSES = ['none', 'slight', 'moderate', 'severe'] as const;

/** What {@link heaveRisk} needs. */
export interface HeaveInput {
  /** Texture of the soil at the pipes. */
  readonly textureClass: TextureClass;
  /** Grains finer than 0.02 mm by mass, 0 to 1, where a laboratory tells; by texture when left out [1]. */
  readonly finerThan20Micrometres?: Fraction;
  /** Water before freezing, by volume, 0 to 1 [m3/m3]. */
  readonly waterByVolume: VolumetricWater;
  /** Greatest radius of frozen soil from the axis of a pipe, 0 where nothing freezes, to 10 [m]. */
  readonly frozenRadius: Length;
  /** How thick frozen soil lies on the pipe then, 0 to 10 [m]. */
  readonly frozenThickness: Length;
  /** Water frozen then, as a depth over the land, 0 to 10 [m]. */
  readonly frozenWater: Length;
  /** From the axis of the nearest pipe to a footing, slab, wall, drain or service, 0 to 1000; none near when left out [m]. */
  readonly structureDistance?: Length;
}

/** Shape of {@link HeaveInput}. */
export const heaveInputShape: Shape<HeaveInput> = {
  textureClass: TEXTURE_CLASSES,
  finerThan20Micrometres: { optional: 'fraction' },
  waterByVolume: 'volumetric water',
  frozenRadius: 'length',
  frozenThickness: 'length',
  frozenWater: 'length',
  structureDistance: { optional: 'length' },
};

/** What frost may do to the ground over the pipes. */
export interface Heave {
  /** How readily ice gathers water in the soil. */
  readonly susceptibility: FrostSusceptibility;
  /** How much the ground may lift. */
  readonly heaveClass: HeaveClass;
  /** Lift by the swelling of the water in place, were no pore empty: what can be computed; ice that gathers water comes on top [m]. */
  readonly swelling: Length;
  /** From the frozen soil to the structure, below 0 where it is reached; absent without one [m]. */
  readonly structureClearance?: Length;
  /** What to look at. */
  readonly findings: readonly Finding[];
  /** What the class rests on. */
  readonly sources: readonly Source[];
}

/** Shape of {@link Heave} without findings and sources. */
export const heaveShape: Shape<Omit<Heave, 'findings' | 'sources'>> = {
  susceptibility: FROST_SUSCEPTIBILITIES,
  heaveClass: HEAVE_CLASSES,
  swelling: 'length',
  structureClearance: { optional: 'length' },
};

/** Water grows by so much of its volume as it freezes: 1000 over 917 kg/m³ [1]. */
const SWELLING = 0.09;
/** Thinner frozen soil than this has little room for lenses, soil as wet as this has water to feed them, and a structure nearer than this feels them [m], [m3/m3], [m]. */
const THIN = 0.05;
const WET = 0.3;
const NEAR = 1;
const DRY = 0.1;

/**
 * How much frost around the pipes may lift the ground, by soil, water, ice and what stands near.
 *
 * A class, not a height: lenses of ice draw water from below, how much depends on ground water, load and time, and no sample tells. The swelling of the
 * water in place is computed; in soil with air in its pores even that is an upper bound. Frost that comes from above counts for itself.
 * Near a building the class is a reason to ask whoever answers for its foundations.
 *
 * @param input - see {@link HeaveInput}
 * @returns susceptibility, class, swelling and clearance [m]
 * @throws InputError for a value out of its range
 * @remarks Susceptibility by grains after `casagrande1932`; the steps by thickness (0.05 m), water (0.30) and distance (1 m) are judgement. Invariants tested: no ice,
 * no heave; more water, thicker ice or a nearer structure never lower the class.
 * @example
 * ```ts @import.meta.vitest
 * const { metres, volumetricFraction } = await import('../units/index.js');
 * const silt = { textureClass: 'silt loam', waterByVolume: volumetricFraction(0.35) } as const;
 * const { heaveClass, swelling } = heaveRisk({ ...silt, frozenRadius: metres(0.2), frozenThickness: metres(0.18), frozenWater: metres(0.03) });
 * expect(heaveClass).toBe('severe');
 * expect(swelling).toBeCloseTo(0.0027, 6);
 * ```
 */
export function heaveRisk(input: HeaveInput): Heave {
  const { textureClass, finerThan20Micrometres, waterByVolume, frozenRadius, frozenThickness, frozenWater, structureDistance } = input;
  demandChoice('textureClass', textureClass, TEXTURE_CLASSES);
  if (finerThan20Micrometres !== undefined) demand('finerThan20Micrometres', 'fraction', finerThan20Micrometres, { atLeast: 0, atMost: 1 });
  demand('waterByVolume', 'volumetric water', waterByVolume, { atLeast: 0, atMost: 1 });
  demand('frozenRadius', 'length', frozenRadius, { atLeast: 0, atMost: 10 });
  demand('frozenThickness', 'length', frozenThickness, { atLeast: 0, atMost: 10 });
  demand('frozenWater', 'length', frozenWater, { atLeast: 0, atMost: 10 });
  if (structureDistance !== undefined) demand('structureDistance', 'length', structureDistance, { atLeast: 0, atMost: 1000 });
  const susceptibility = finerThan20Micrometres !== undefined && finerThan20Micrometres < FEW_FINES ? 'none' : SUSCEPTIBILITY[textureClass];
  const clearance = structureDistance === undefined ? undefined : structureDistance - frozenRadius;
  const nothing = frozenRadius === 0 || susceptibility === 'none' || waterByVolume < DRY;
  let rank = FROST_SUSCEPTIBILITIES.indexOf(susceptibility);
  if (frozenThickness < THIN) rank = Math.max(1, rank - 1);
  if (waterByVolume >= WET) rank += 1;
  if (clearance !== undefined && clearance < NEAR) rank += clearance <= 0 ? HEAVE_CLASSES.length : 1;
  const heaveClass = (nothing ? undefined : HEAVE_CLASSES[Math.min(rank, HEAVE_CLASSES.length - 1)]) ?? 'none';
  return {
    susceptibility,
    heaveClass,
    swelling: (nothing ? 0 : SWELLING * frozenWater) as Length,
    ...(clearance !== undefined && { structureClearance: clearance as Length }),
    findings:
      clearance !== undefined && clearance < NEAR && !nothing
        ? [
            {
              code: 'ice-near-structure',
              level: clearance <= 0 ? 'stop' : 'warning',
              values: { structureClearance: clearance as Length },
              source: 'common practice',
            },
          ]
        : [],
    sources: ['casagrande1932', 'common practice'],
  };
}
