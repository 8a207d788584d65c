import type { Band, SoilThermal } from '../states/index.js';
import type { Kind } from '../units/index.js';
import { bandOfChances } from './chance-band.js';
import { errorBudget } from './error-budget.js';
import { caseErrors, type CaseKnowledge } from './evidence-errors.js';
import type { ConductivityError } from './evidence-properties.js';
import { thermalOf } from './heat-capacity.js';
import { estimateOf, heatCapacityOfCase, lay, type SoilCase } from './soil-case.js';
import type { Banded } from './what-if.js';

/** Thermal properties of a case with bands, and the causes of the error of its conductivity. */
export interface BandedCase {
  readonly conductivity: Band<'conductivity'>;
  readonly heatCapacity: Band<'heat capacity'>;
  readonly diffusivity: Band<'diffusivity'>;
  readonly thermal: SoilThermal;
  readonly errors: readonly ConductivityError[];
}

/** Bands of a case that is known so well. */
export function bandedCase(of: SoilCase, known: CaseKnowledge): BandedCase {
  const laid = lay(of);
  const reckoned = { conductivity: estimateOf(laid).conductivity, heatCapacity: heatCapacityOfCase(laid) };
  const { chances, certain, onTop, causes } = caseErrors(of, known);
  const bandOf = <K extends Kind>(middle: number, property: Banded): Band<K> =>
    bandOfChances<K>(middle, { chances: chances(property), certain: certain(property) }, onTop[property]);
  const conductivity = bandOf<'conductivity'>(reckoned.conductivity, 'conductivity');
  const heatCapacity = bandOf<'heat capacity'>(reckoned.heatCapacity, 'heatCapacity');
  const thermal = thermalOf(conductivity.estimate, heatCapacity.estimate);
  // The middle of a quotient is not the quotient of the middles: the band is laid about the diffusivity of the two estimates.
  const spread = bandOf<'diffusivity'>(1, 'diffusivity');
  const { diffusivity: estimate } = thermal;
  const about = estimate / spread.estimate;
  const diffusivity = { ...spread, low: spread.low * about, estimate, high: spread.high * about } as Band<'diffusivity'>;
  return {
    conductivity,
    heatCapacity,
    diffusivity,
    thermal,
    errors: errorBudget(causes.map(({ cause, sides }) => ({ cause, sides: sides.conductivity }))),
  };
}
