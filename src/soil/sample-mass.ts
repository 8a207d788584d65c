import { demand, demandChoice } from '../errors/index.js';
import type { Diameter, Mass, Shape } from '../units/index.js';

/** The soil of which a sample is to be dried. */
export interface GrainySoil {
  /** Largest particle in the soil, above 0 to 75 mm [m]. */
  readonly largestParticle: Diameter;
  /** To how much the water content is to be told: 1 % or 0.1 % of the dry mass; 1 % when left out. */
  readonly recordedTo?: '1 %' | '0.1 %';
}

/** Shape of {@link GrainySoil}. */
export const grainySoilShape: Shape<GrainySoil> = { largestParticle: 'diameter', recordedTo: { optional: ['1 %', '0.1 %'] } };

/** Least mass of a sample. */
export interface LeastSampleMass {
  /** Moist soil to dry, without its container [kg]. */
  readonly leastMass: Mass;
  /** Particle size of the row of the table it was read from, the next that is not smaller [m]. */
  readonly particleSize: Diameter;
}

/** Shape of {@link LeastSampleMass}. */
export const leastSampleMassShape: Shape<LeastSampleMass> = { leastMass: 'mass', particleSize: 'diameter' };

/** Least moist mass by largest particle [m, kg], recalled but for the first mass of the last row (`astmD2216Masses`). */
const TABLE = [
  { size: 0.002, '1 %': 0.02, '0.1 %': 0.02 },
  { size: 0.00475, '1 %': 0.02, '0.1 %': 0.1 },
  { size: 0.0095, '1 %': 0.05, '0.1 %': 0.5 },
  { size: 0.019, '1 %': 0.25, '0.1 %': 2.5 },
  { size: 0.0375, '1 %': 1, '0.1 %': 10 },
] as const;
const COARSEST = { size: 0.075, '1 %': 5, '0.1 %': 50 } as const;

/**
 * Least moist mass of a sample for its water content, by the largest particle in it: one stone more or less must not count.
 *
 * A kitchen balance that is right to a gram asks for more of fine soil: 200 g and up.
 *
 * @param soil - largest particle [m], and to how much the water content is to be told
 * @returns least moist mass [kg], and the particle size of the row it stands in [m]
 * @throws InputError when the particle is no particle or larger than 75 mm
 * @remarks
 * Source: `astmD2216Masses`, a table recalled, of which the row of 75 mm was seen quoted. Checked against a rule for sieving: a sample of a
 * hundred largest particles.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, grams } = await import('../units/index.js');
 * expect(leastSampleMass({ largestParticle: diameterMillimetres(15) }).leastMass).toBe(grams(250));
 * ```
 */
export function leastSampleMass({ largestParticle, recordedTo = '1 %' }: GrainySoil): LeastSampleMass {
  const hint = largestParticle > 1 ? 'it may be in millimetres, given as metres' : 'take stones above 75 mm out and tell their share';
  demand('largestParticle', 'diameter', largestParticle, { above: 0, atMost: 0.075 }, hint);
  demandChoice('recordedTo', recordedTo, ['1 %', '0.1 %']);
  const row = TABLE.find(({ size }) => largestParticle <= size * (1 + 1e-9)) ?? COARSEST;
  return { leastMass: row[recordedTo] as Mass, particleSize: row.size as Diameter };
}
