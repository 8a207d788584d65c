import type { TextureClass } from './texture.js';

/**
 * Water that soil of a texture holds once rain has drained, by dry mass [kg/kg]. For six classes the median of undisturbed cores at a suction
 * of 33 kPa (`kansasCores2022`, all 55 cores, few of each class); for the others judgement (`common practice`): silt and clay as the classes
 * beside them, sand and the sandy clays between what little sand holds and the cores.
 */
export const HELD_MOISTURE: Readonly<Record<TextureClass, number>> = {
  sand: 0.05,
  'loamy sand': 0.08,
  'sandy loam': 0.12,
  loam: 0.11,
  'silt loam': 0.24,
  silt: 0.24,
  'sandy clay loam': 0.16,
  'clay loam': 0.26,
  'silty clay loam': 0.24,
  'sandy clay': 0.2,
  'silty clay': 0.24,
  clay: 0.24,
};

/** Scatter of the logarithm of the water that cores of one class hold at that suction: 0.13 without the two of loam, 0.16 with them (`kansasCores2022`) [1]. */
export const HELD_SCATTER = 0.15;
