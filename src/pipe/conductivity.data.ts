import type { Band } from '../states/index.js';

/**
 * Thermal conductivity of a polyethylene wall [W/(m.K)].
 *
 * 0.40 with ±0.04 for resin, density and temperature. Published values run from 0.38 to 0.45 (`peConductivity2015`, `peConductivity2021`);
 * that nine in ten pipes lie in the band is a judgement, and it matters little: 10 % here move the resistance of a loop in soil by about 1 %.
 */
export const POLYETHYLENE_CONDUCTIVITY: Band<'conductivity'> = { low: 0.36, estimate: 0.4, high: 0.44, coverage: 0.9 } as Band<'conductivity'>;
