import { demandChoice } from '../errors/index.js';
import { FIELD_CONSEQUENCES, type FieldConsequence } from '../soil/index.js';
import { CONSEQUENCE_WORDS } from './text/soil-words.js';

/**
 * What gravel or organic matter in the ground changes, for a person.
 *
 * @param consequence - a consequence of `identifyInField`
 * @returns one or two sentences
 * @throws InputError for another consequence
 * @example
 * ```ts @import.meta.vitest
 * expect(describeFieldConsequence('take as peat')).toContain('poor ground');
 * ```
 */
export function describeFieldConsequence(consequence: FieldConsequence): string {
  demandChoice('consequence', consequence, FIELD_CONSEQUENCES);
  return CONSEQUENCE_WORDS[consequence];
}
