import type { Ratio } from '../units/index.js';

/** Kinds of emitters. */
export type EmitterKind = 'radiator' | 'convector' | 'floor' | 'fan coil';

/**
 * Exponents of the heat that emitters give over their mean excess temperature, where the maker states none [1].
 *
 * Radiators lie between 1.2 and 1.35 by make. EN 1264 takes the heat of a floor as proportional to the excess of the water (from memory); 1.1 asks for warmer water at part load and is on
 * the safe side. A fan coil at one fan speed is a heat exchanger whose heat is proportional to the excess (from memory). Source: `emitterExponents`.
 */
export const EMITTER_EXPONENTS: Readonly<Record<EmitterKind, Ratio>> = {
  radiator: 1.3 as Ratio,
  convector: 1.4 as Ratio,
  floor: 1.1 as Ratio,
  'fan coil': 1 as Ratio,
};
