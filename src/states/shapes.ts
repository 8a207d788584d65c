import type { Kind, Shape } from '../units/index.js';
import type { AnnualWave, FluidState, Moisture, PipeSection, SoilThermal } from './states.js';

/** Shape of {@link Moisture}. */
export const moistureShape: Shape<Moisture> = {
  by: 'basis',
  oneOf: { dry: { value: 'moisture on dry basis' }, wet: { value: 'moisture on wet basis' } },
};

/** Shape of {@link SoilThermal}. */
export const soilThermalShape: Shape<SoilThermal> = { conductivity: 'conductivity', heatCapacity: 'heat capacity', diffusivity: 'diffusivity' };

/** Shape of {@link AnnualWave}. */
export const annualWaveShape: Shape<AnnualWave> = {
  of: ['air', 'ground surface'],
  mean: 'temperature',
  amplitude: 'temperature difference',
  coldestDay: 'day of year',
  period: 'time',
};

/** Shape of {@link FluidState}. */
export const fluidStateShape: Shape<FluidState> = {
  temperature: 'temperature',
  massFraction: 'mass fraction',
  density: 'density',
  viscosity: 'dynamic viscosity',
  specificHeat: 'specific heat',
  conductivity: 'conductivity',
  freezingPoint: 'temperature',
};

/** Shape of {@link PipeSection}. */
export const pipeSectionShape: Shape<PipeSection> = { outsideDiameter: 'diameter', insideDiameter: 'diameter', wallConductivity: 'conductivity' };

/** The shape of a `Band` of one kind. */
export interface BandShape<K extends Kind> {
  /** Kind of the lower limit. */
  readonly low: K;
  /** Kind of the single value. */
  readonly estimate: K;
  /** Kind of the upper limit. */
  readonly high: K;
  /** Kind of the probability that the limits hold the value. */
  readonly coverage: 'fraction';
}

/**
 * Shape of a `Band` of the given kind.
 *
 * @param kind - the kind of the uncertain quantity
 * @returns the shape
 * @example
 * ```ts @import.meta.vitest
 * expect(bandShape('conductivity').low).toBe('conductivity');
 * ```
 */
export function bandShape<K extends Kind>(kind: K): BandShape<K> {
  return { low: kind, estimate: kind, high: kind, coverage: 'fraction' };
}
