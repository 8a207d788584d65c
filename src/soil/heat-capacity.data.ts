import type { HandbookState } from './handbook-words.js';

/**
 * Least, usual and greatest volumetric heat capacity where none is known, by how wet the soil is [J/(m3.K)]. Judgement, in keeping with
 * the constituents after de Vries at dry densities of 1300 to 1700 kg/m³ and the handbooks' own ranges.
 */
export const ASSUMED_HEAT_CAPACITY: Readonly<Record<HandbookState, readonly [low: number, estimate: number, high: number]>> = {
  dry: [1.2e6, 1.4e6, 1.7e6],
  '5 % water': [1.2e6, 1.5e6, 1.9e6],
  moist: [1.7e6, 2.1e6, 2.6e6],
  '15 % water': [1.7e6, 2.1e6, 2.6e6],
  natural: [1.6e6, 2.1e6, 2.8e6],
  saturated: [2.4e6, 2.8e6, 3.3e6],
  'natural, frozen': [1.2e6, 1.6e6, 2.0e6],
  'saturated, frozen': [1.6e6, 1.9e6, 2.2e6],
};
