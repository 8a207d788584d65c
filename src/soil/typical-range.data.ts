import type { TextureClass } from './texture.js';

/** What bounds the guess for a texture class. */
export interface TypicalRangeRecord {
  /** Sand of the middle of the class in the triangle [kg/kg]. */
  readonly middleSand: number;
  /** Dry density of farmed topsoil, which lies looser than soil at the depth of a pipe; absent where the table has none [kg/m3]. */
  readonly topsoil?: number;
}

/** Middle of each class, counted over the triangle, and topsoil densities (`topsoilDensities`). */
export const TYPICAL_RANGES: Readonly<Record<TextureClass, TypicalRangeRecord>> = {
  sand: { middleSand: 0.917, topsoil: 1690 },
  'loamy sand': { middleSand: 0.817, topsoil: 1630 },
  'sandy loam': { middleSand: 0.647, topsoil: 1510 },
  'silt loam': { middleSand: 0.215, topsoil: 1380 },
  silt: { middleSand: 0.074 },
  loam: { middleSand: 0.411, topsoil: 1430 },
  'sandy clay loam': { middleSand: 0.599, topsoil: 1400 },
  'silty clay loam': { middleSand: 0.1, topsoil: 1270 },
  'clay loam': { middleSand: 0.3255, topsoil: 1300 },
  'sandy clay': { middleSand: 0.517, topsoil: 1340 },
  'silty clay': { middleSand: 0.067, topsoil: 1210 },
  clay: { middleSand: 0.195, topsoil: 1250 },
};
