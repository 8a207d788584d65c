/** Soils that handbooks have values for. `light` is about 1280 kg/m³ of dry density, `heavy` about 1920. */
export type HandbookMaterial =
  | 'gravel'
  | 'sand'
  | 'light sand'
  | 'heavy sand'
  | 'silt'
  | 'clay'
  | 'light clay'
  | 'heavy clay'
  | 'loam'
  | 'till'
  | 'peat';

/** How wet a handbook's soil is. `natural` is as found, moisture not told; `5 % water` and `15 % water` are on dry basis. */
export type HandbookState = 'dry' | 'moist' | 'saturated' | 'natural' | '5 % water' | '15 % water' | 'natural, frozen' | 'saturated, frozen';

/** The words of {@link HandbookMaterial}. */
export const HANDBOOK_MATERIALS: readonly HandbookMaterial[] = [
  'gravel',
  'sand',
  'light sand',
  'heavy sand',
  'silt',
  'clay',
  'light clay',
  'heavy clay',
  'loam',
  'till',
  'peat',
];

/** The words of {@link HandbookState}. */
export const HANDBOOK_STATES: readonly HandbookState[] = [
  'dry',
  'moist',
  'saturated',
  'natural',
  '5 % water',
  '15 % water',
  'natural, frozen',
  'saturated, frozen',
];
