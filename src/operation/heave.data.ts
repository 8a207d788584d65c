import type { TextureClass } from '../soil/index.js';

/** How readily ice gathers water in a soil. */
export type FrostSusceptibility = (typeof FROST_SUSCEPTIBILITIES)[number];

/** Every susceptibility, the least first. */
export const FROST_SUSCEPTIBILITIES = ['none', 'low', 'medium', 'high'] as const;

/**
 * By texture: silt both draws water up and lets it pass, sand draws none, clay lets little pass in one winter (`casagrande1932`; the ranking of textures is
 * judgement on it).
 */
export const SUSCEPTIBILITY: Readonly<Record<TextureClass, FrostSusceptibility>> = {
  sand: 'low',
  'loamy sand': 'low',
  'sandy loam': 'medium',
  loam: 'high',
  'silt loam': 'high',
  silt: 'high',
  'sandy clay loam': 'medium',
  'clay loam': 'medium',
  'silty clay loam': 'high',
  'sandy clay': 'medium',
  'silty clay': 'medium',
  clay: 'medium',
};

/** Soil with fewer grains finer than 0.02 mm gathers no ice (`casagrande1932`) [1]. */
export const FEW_FINES = 0.03;
