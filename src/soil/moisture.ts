import { demand, demandChoice, InputError } from '../errors/index.js';
import type { Moisture } from '../states/index.js';
import type { DryBasisMoisture, Mass, Shape, WetBasisMoisture } from '../units/index.js';
import { massHint, shareHint, weighingHint } from './weighing-hints.js';

/** The weighings of a sample before and after drying in the oven. */
export interface Drying {
  /** Moist soil with its container, up to 1000 kg [kg]. */
  readonly moistMass: Mass;
  /** Dry soil with its container, dried at 110 °C until its mass no longer changes [kg]. */
  readonly dryMass: Mass;
  /** The empty container; 0 when left out [kg]. */
  readonly tareMass?: Mass;
}

/** Shape of {@link Drying}. */
export const dryingShape: Shape<Drying> = { moistMass: 'mass', dryMass: 'mass', tareMass: { optional: 'mass' } };

/** Heaviest sample with its container [kg]. */
const HEAVIEST = 1000;

/** Most water a soil is taken to hold: twenty times its solids, wetter than any peat [kg/kg]. */
const WETTEST = 20;

/**
 * Water content of a soil sample from its weighings before and after drying.
 *
 * @param weighings - moist, dry and tare mass [kg]
 * @returns moisture on dry basis: water over solids
 * @throws InputError when the masses are impossible, alone or together; the hint names the mistake that would explain them
 * @remarks
 * w = (moist − dry) / (dry − tare). Source: `astmD2216`. Checked against worked weighings computed independently.
 *
 * Invariants: the same in any unit of mass; 0 when nothing dried off.
 * @example
 * ```ts @import.meta.vitest
 * const { dryBasisPercent, grams } = await import('../units/index.js');
 * const moisture = moistureFromDrying({ moistMass: grams(512.4), dryMass: grams(431.7), tareMass: grams(102.3) });
 * expect(dryBasisPercent.of(dryBasis(moisture))).toBeCloseTo(24.5, 2);
 * ```
 */
export function moistureFromDrying({ moistMass, dryMass, tareMass = 0 as Mass }: Drying): Moisture {
  const weighed = { moistMass, dryMass, tareMass };
  for (const [name, mass] of Object.entries(weighed)) {
    demand(name, 'mass', mass, name === 'tareMass' ? { atLeast: 0, atMost: HEAVIEST } : { above: 0, atMost: HEAVIEST }, massHint(mass));
  }
  const refuse = (argument: keyof Drying, allowed: string, otherwise: string): never => {
    const hint = weighingHint(weighed) ?? otherwise;
    throw new InputError({ code: 'impossible', argument, value: { kind: 'mass', value: weighed[argument] }, allowed, hint });
  };
  if (dryMass > moistMass) refuse('dryMass', `at most the moist mass, ${shown(moistMass)} kg`, 'check the weighings');
  if (dryMass <= tareMass) refuse('tareMass', `below the dry mass, ${shown(dryMass)} kg`, 'dry mass includes the container');
  const value = (moistMass - dryMass) / (dryMass - tareMass);
  const hint = weighingHint(weighed) ?? 'hardly any solids are left; check the weighings and the tare';
  demand('dryMass', 'moisture on dry basis', value, { atMost: WETTEST }, hint);
  return { basis: 'dry', value: value as DryBasisMoisture };
}

/**
 * Water content on dry basis: water over solids, the engineer's basis.
 *
 * @param moisture - water content with its basis, at most 20 on dry basis
 * @returns water over dry soil [kg/kg]; may exceed 1
 * @throws InputError when the share is impossible on its basis
 * @remarks w = w′ / (1 − w′), exact. Invariant: inverse of {@link wetBasis} to rounding.
 * @example
 * ```ts @import.meta.vitest
 * const { wetBasisPercent } = await import('../units/index.js');
 * expect(dryBasis({ basis: 'wet', value: wetBasisPercent(20) })).toBeCloseTo(0.25, 12);
 * ```
 */
export function dryBasis(moisture: Moisture): DryBasisMoisture {
  demandMoisture('moisture', moisture);
  return (moisture.basis === 'dry' ? moisture.value : moisture.value / (1 - moisture.value)) as DryBasisMoisture;
}

/**
 * Water content on wet basis: water over moist soil, as compost and garden advice has it.
 *
 * @param moisture - water content with its basis, at most 20 on dry basis
 * @returns water over moist soil [kg/kg]; below 1
 * @throws InputError when the share is impossible on its basis
 * @remarks w′ = w / (1 + w), exact. Invariant: inverse of {@link dryBasis} to rounding.
 * @example
 * ```ts @import.meta.vitest
 * const { dryBasisPercent } = await import('../units/index.js');
 * expect(wetBasis({ basis: 'dry', value: dryBasisPercent(100) })).toBe(0.5);
 * ```
 */
export function wetBasis(moisture: Moisture): WetBasisMoisture {
  demandMoisture('moisture', moisture);
  return (moisture.basis === 'wet' ? moisture.value : moisture.value / (1 + moisture.value)) as WetBasisMoisture;
}

function demandMoisture(argument: string, moisture: Moisture): void {
  demandChoice(`${argument}.basis`, moisture?.basis, ['dry', 'wet']);
  const { value } = moisture;
  if (moisture.basis === 'dry') {
    demand(`${argument}.value`, 'moisture on dry basis', value, { atLeast: 0, atMost: WETTEST }, shareHint(value, 'weigh again'));
  } else {
    const wettest = WETTEST / (1 + WETTEST);
    demand(
      `${argument}.value`,
      'moisture on wet basis',
      value,
      { atLeast: 0, atMost: wettest },
      shareHint(value, 'a share of 1 or more is on dry basis'),
    );
  }
}

const shown = (mass: number): string => String(Number(mass.toPrecision(6)));
