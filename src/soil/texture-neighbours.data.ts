import type { TextureClass } from './texture.js';

/** Classes that share a side in the texture triangle; corners that touch do not count. Held to the triangle by a test. */
export const TEXTURE_NEIGHBOURS: Readonly<Record<TextureClass, readonly TextureClass[]>> = {
  sand: ['loamy sand'],
  'loamy sand': ['sand', 'sandy loam'],
  'sandy loam': ['loamy sand', 'silt loam', 'loam', 'sandy clay loam'],
  'silt loam': ['sandy loam', 'silt', 'loam', 'silty clay loam', 'clay loam'],
  silt: ['silt loam'],
  loam: ['sandy loam', 'silt loam', 'sandy clay loam', 'clay loam'],
  'sandy clay loam': ['sandy loam', 'loam', 'clay loam', 'sandy clay'],
  'silty clay loam': ['silt loam', 'clay loam', 'silty clay'],
  'clay loam': ['silt loam', 'loam', 'sandy clay loam', 'silty clay loam', 'sandy clay', 'clay'],
  'sandy clay': ['sandy clay loam', 'clay loam', 'clay'],
  'silty clay': ['silty clay loam', 'clay'],
  clay: ['clay loam', 'sandy clay', 'silty clay'],
};
