import { demand } from '../errors/index.js';
import type { Ratio } from '../units/index.js';
import { MOISTURE_WORDS, type MoistureWord, SATURATION_FROM } from './field-terms.data.js';

/** Water beyond the pores that errors of measurement account for, as `soilPhases` has it [1]. */
const FULLEST = 1.05;

/**
 * The word by which a person would call a soil of this saturation.
 *
 * A judgement: the standard has words only. Where the word found in the field is another, sample or density is to be doubted.
 *
 * @param saturation - water in the pores, 0 to 1.05 [1]
 * @returns dry, moist or wet
 * @throws InputError when the saturation is impossible
 * @remarks Words: `astmD2488`; their saturation: `common practice`. Invariant: the range that {@link identifyInField} gives for the word holds it.
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * expect(moistureWord(ratio(0.78))).toBe('moist');
 * ```
 */
export function moistureWord(saturation: Ratio): MoistureWord {
  demand('saturation', 'ratio', saturation, { atLeast: 0, atMost: FULLEST });
  return MOISTURE_WORDS.reduce<MoistureWord>((found, word) => (saturation >= SATURATION_FROM[word] ? word : found), 'dry');
}
