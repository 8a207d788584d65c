import type { Diffusivity, Length, Ratio, Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';

/** Values of the findings that readings of the air or in the ground raise, by code; a part of those of the climate room. */
export interface GroundTemperatureFindingValues {
  /** No reading falls into more than half of the year. */
  'readings-leave-seasons-out': { readonly longestGap: Time };
  /** A semi-annual sine that could be chance. */
  'second-harmonic-vague': { readonly amplitude: TemperatureDifference; readonly secondHarmonicError: TemperatureDifference };
  /** The readings in the ground leave its mean too open. */
  'probe-fit-vague': { readonly meanLow: Temperature; readonly meanHigh: Temperature; readonly degreesOfFreedom: number };
  /** The depths read lie so close together that they hardly tell the diffusivity. */
  'probe-depths-close': { readonly depthsApart: Length };
  /** No choice of the depths gives the wanted certainty in time. */
  'probe-plan-out-of-reach': { readonly longestTime: Time };
  /** One depth lies off the wave that fits all. */
  'probe-depth-disagrees': { readonly depth: Length; readonly meanResidual: TemperatureDifference };
  /** A diffusivity that hardly any soil has. */
  'diffusivity-unlikely': { readonly diffusivity: Diffusivity; readonly usualLow: Diffusivity; readonly usualHigh: Diffusivity };
  /** A diffusivity from a pair of depths, with what its method rests on. */
  'diffusivity-method-weak': { readonly method: 'amplitudes' | 'lags' | 'arctangent' | 'logarithm'; readonly relativeError: Ratio };
  /** Two methods give diffusivities far apart on the same readings. */
  'diffusivities-disagree': { readonly diffusivity: Diffusivity; readonly otherDiffusivity: Diffusivity };
}

/** Shapes of {@link GroundTemperatureFindingValues}. */
export const groundTemperatureShapes: { readonly [C in keyof GroundTemperatureFindingValues]: Shape<GroundTemperatureFindingValues[C]> } = {
  'readings-leave-seasons-out': { longestGap: 'time' },
  'second-harmonic-vague': { amplitude: 'temperature difference', secondHarmonicError: 'temperature difference' },
  'probe-fit-vague': { meanLow: 'temperature', meanHigh: 'temperature', degreesOfFreedom: 'count' },
  'probe-depths-close': { depthsApart: 'length' },
  'probe-plan-out-of-reach': { longestTime: 'time' },
  'probe-depth-disagrees': { depth: 'length', meanResidual: 'temperature difference' },
  'diffusivity-unlikely': { diffusivity: 'diffusivity', usualLow: 'diffusivity', usualHigh: 'diffusivity' },
  'diffusivity-method-weak': { method: ['amplitudes', 'lags', 'arctangent', 'logarithm'], relativeError: 'ratio' },
  'diffusivities-disagree': { diffusivity: 'diffusivity', otherDiffusivity: 'diffusivity' },
};
