import type { TextureClass } from './texture.js';

/**
 * Sand and clay that stand for a class where only the class is known [kg/kg]: the middle of its area in the triangle (`usdaTexture`), which
 * a test counts again. The middle of loam has 0.415 of sand and would conduct like a coarse soil, which loam as a class does not
 * (`typicalSoil`); 0.39 stands for it.
 */
export const TEXTURE_MIDDLES: Readonly<Record<TextureClass, { readonly sand: number; readonly clay: number }>> = {
  sand: { sand: 0.919, clay: 0.032 },
  'loamy sand': { sand: 0.818, clay: 0.057 },
  'sandy loam': { sand: 0.649, clay: 0.102 },
  'silt loam': { sand: 0.217, clay: 0.13 },
  silt: { sand: 0.075, clay: 0.049 },
  loam: { sand: 0.39, clay: 0.181 },
  'sandy clay loam': { sand: 0.603, clay: 0.269 },
  'silty clay loam': { sand: 0.1, clay: 0.332 },
  'clay loam': { sand: 0.328, clay: 0.332 },
  'sandy clay': { sand: 0.52, clay: 0.415 },
  'silty clay': { sand: 0.067, clay: 0.467 },
  clay: { sand: 0.196, clay: 0.631 },
};
