import { demand, InputError } from '../errors/index.js';
import type { Ratio, Temperature } from '../units/index.js';
import { demandFluid, type Fluid, type OfAnyFluid } from './fluids.js';
import { demandMeasuringTemperature, readConcentration, type ReadConcentration } from './read-concentration.js';
import { demandRefractive, indexOf } from './refractive-index.js';

/** A reading of a refractometer. */
export interface RefractometerRead {
  /** What is in the loop. */
  readonly fluid: Fluid;
  /** Temperature of the sample; 20 °C if the instrument compensates for temperature [degC]. */
  readonly temperature: Temperature;
  /** What it shows [1]. */
  readonly refractiveIndex: Ratio;
  /** How far the reading may be off; 0.0003 when left out [1]. */
  readonly indexError?: Ratio;
}

/** How well the rule of mixtures gives the index. */
const RULE_ERROR = 0.001;

/**
 * What a refractometer's reading says of concentration and protection.
 *
 * For glycols, glycerol and, less well, ethanol. Methanol is refused: its index rises by 0.003 for ten per cent and then falls again.
 *
 * @param read - fluid, temperature of the sample [degC], reading, error of the reading
 * @returns concentration and freezing point, each as a band
 * @throws InputError when a number is impossible, no mixture gives the reading, or the fluid's index is not known or says too little
 * @remarks
 * The rule of {@link refractiveIndex} is good to about 0.001, added to the error of the reading. An instrument with the scale of the
 * product in the loop is better; one with the scale of another glycol is wrong.
 *
 * Invariant: gives back the concentration that `refractiveIndex` was asked with.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, massPercent, ratio } = await import('../units/index.js');
 * const read = { fluid: 'propylene-glycol', temperature: celsius(20), refractiveIndex: ratio(1.3612) } as const;
 * expect(massPercent.of(fromRefractometer(read).massFraction.estimate)).toBeCloseTo(25, 0);
 * ```
 */
export function fromRefractometer(read: OfAnyFluid<RefractometerRead>): ReadConcentration {
  const { fluid, temperature, refractiveIndex, indexError = 0.0003 as Ratio } = read;
  const record = demandFluid(fluid);
  const refractive = demandRefractive(record);
  if (record.name === 'methanol') {
    const hint = 'ten per cent of methanol raise the index by 0.003 only; use a hydrometer';
    throw new InputError({ code: 'impossible', argument: 'fluid', value: record.name, allowed: 'a fluid whose index tells its concentration', hint });
  }
  demandMeasuringTemperature(record, temperature);
  demand('refractiveIndex', 'ratio', refractiveIndex, { atLeast: 1, below: 2 });
  demand('indexError', 'ratio', indexError, { atLeast: 0, atMost: 0.01 });
  const readingOf = (massFraction: number): number => indexOf(refractive, massFraction, temperature);
  return readConcentration(record, { argument: 'refractiveIndex', reading: refractiveIndex, error: indexError + RULE_ERROR, readingOf });
}
