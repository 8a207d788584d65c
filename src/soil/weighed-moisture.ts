import { demand, demandChoice } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Diameter, DryBasisMoisture, Mass, Shape, WetBasisMoisture } from '../units/index.js';
import { demandBalanceError } from './in-place-density.js';
import { dryBasis, moistureFromDrying, wetBasis, type Drying } from './moisture.js';
import { leastSampleMass } from './sample-mass.js';

/** A sample weighed before and after drying, with what is known of scale, soil and drying. */
export interface WeighedSample extends Drying {
  /** How it was dried to constant mass: in the oven at 110 °C, or crumbled in air or at up to 40 °C; in the oven when left out. */
  readonly dried?: 'oven' | 'air';
  /** Standard error of one reading of the balance, above 0 to 10 kg; 1 g when left out [kg]. */
  readonly balanceError?: Mass;
  /** Largest particle in the soil, up to 75 mm; the sample is taken as large enough when left out [m]. */
  readonly largestParticle?: Diameter;
}

/** Shape of {@link WeighedSample}. */
export const weighedSampleShape: Shape<WeighedSample> = {
  moistMass: 'mass',
  dryMass: 'mass',
  tareMass: { optional: 'mass' },
  dried: { optional: ['oven', 'air'] },
  balanceError: { optional: 'mass' },
  largestParticle: { optional: 'diameter' },
};

/** Water content of a sample on both bases, with its error. */
export interface WeighedMoisture {
  /** Water over solids [kg/kg]. */
  readonly dryBasis: DryBasisMoisture;
  /** Water over moist soil [kg/kg]. */
  readonly wetBasis: WetBasisMoisture;
  /** Standard error of the water content on dry basis by the balance, and by what air-dry soil still holds [kg/kg]. */
  readonly moistureError: DryBasisMoisture;
  /** Water in the sample [kg]. */
  readonly waterMass: Mass;
  /** Solids in the sample [kg]. */
  readonly solidsMass: Mass;
}

/** {@link WeighedMoisture} with findings. */
export interface WeighedMoistureResult extends WeighedMoisture {
  /** What is possible but doubtful about the weighings. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link WeighedMoisture}. */
export const weighedMoistureShape: Shape<WeighedMoisture> = {
  dryBasis: 'moisture on dry basis',
  wetBasis: 'moisture on wet basis',
  moistureError: 'moisture on dry basis',
  waterMass: 'mass',
  solidsMass: 'mass',
};

/** Water that soil dried at 40 °C still holds: mean and scatter of 27 readings of cores (`kansasCores2022`) [kg/kg]. */
const AIR_DRY = { held: 0.0114, scatter: 0.0047 };

/** Standard error from which on a water content is called vague [kg/kg]; source `common practice`. */
const VAGUE = 0.02;

/**
 * Water content of a soil sample on both bases with its error, from its weighings.
 *
 * Air-dry is not dry: what such soil still holds is added, and widens the error.
 *
 * @param sample - moist, dry and tare mass [kg], way of drying, error of the balance [kg], largest particle [m]
 * @returns water content on both bases and its standard error [kg/kg], water and solids [kg], with findings
 * @throws InputError when a number is impossible, alone or with the others; the hint names the mistake that would explain it
 * @remarks
 * w = (moist − dry) / (dry − tare). One error σ of the balance for each weighing gives σ/solids · √(1 + (1 + w)² + w²), the last part only with
 * a container. Sources: `astmD2216`, `kansasCores2022` (1.1 % by mass left at 40 °C). Checked against a Monte Carlo.
 *
 * Invariants: the two bases belong together; the error falls with the size of the sample.
 * @example
 * ```ts @import.meta.vitest
 * const { dryBasisPercent, grams } = await import('../units/index.js');
 * const { moistureError, findings } = weighedMoisture({ moistMass: grams(240), dryMass: grams(200) });
 * expect(dryBasisPercent.of(moistureError)).toBeCloseTo(0.78, 2);
 * expect(findings).toEqual([]);
 * ```
 */
export function weighedMoisture(sample: WeighedSample): WeighedMoistureResult {
  const { moistMass, dryMass, tareMass = 0 as Mass, dried = 'oven', largestParticle } = sample;
  const oven = dryBasis(moistureFromDrying(sample));
  demandChoice('dried', dried, ['oven', 'air']);
  const balanceError = demandBalanceError(sample.balanceError);
  const held = dried === 'air' ? AIR_DRY : { held: 0, scatter: 0 };
  // The mass left is solids and what they still hold.
  const solidsMass = ((dryMass - tareMass) / (1 + held.held)) as Mass;
  const value = ((1 + oven) * (1 + held.held) - 1) as DryBasisMoisture;
  demand('dryMass', 'moisture on dry basis', value, { atMost: 20 }, 'hardly any solids are left; check the weighings and the tare');
  const weighing = (balanceError / (dryMass - tareMass)) * Math.hypot(1, 1 + oven, tareMass === 0 ? 0 : oven) * (1 + held.held);
  const moistureError = Math.hypot(weighing, (1 + oven) * held.scatter) as DryBasisMoisture;
  const moisture = { basis: 'dry', value } as const;
  return {
    dryBasis: value,
    wetBasis: wetBasis(moisture),
    moistureError,
    waterMass: (moistMass - tareMass - solidsMass) as Mass,
    solidsMass,
    findings: [
      ...airFindings(dried, value),
      ...vagueFindings(moistureError, solidsMass, weighing),
      ...grainFindings((moistMass - tareMass) as Mass, largestParticle),
    ],
  };
}

function airFindings(dried: 'oven' | 'air', moisture: DryBasisMoisture): readonly Finding[] {
  const values = { moisture, added: AIR_DRY.held as DryBasisMoisture };
  return dried === 'oven' ? [] : [{ code: 'dried-in-air', level: 'warning', values, source: 'kansasCores2022' }];
}

function vagueFindings(moistureError: DryBasisMoisture, solidsMass: Mass, weighing: number): readonly Finding[] {
  const values = { moistureError, solidsMass, enough: ((solidsMass * weighing) / (VAGUE / 2)) as Mass };
  return weighing <= VAGUE ? [] : [{ code: 'moisture-weighed-poorly', level: 'warning', values, source: 'astmD2216' }];
}

function grainFindings(soilMass: Mass, largestParticle: Diameter | undefined): readonly Finding[] {
  if (largestParticle === undefined) return [];
  const { leastMass } = leastSampleMass({ largestParticle });
  const values = { soilMass, leastMass, largestParticle };
  return soilMass >= leastMass ? [] : [{ code: 'sample-small-for-its-grains', level: 'warning', values, source: 'astmD2216Masses' }];
}
