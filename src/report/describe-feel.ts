import { demandChoice } from '../errors/index.js';
import { FEEL_ANSWERS, type FeelAnswer, type FeelQuestion } from '../soil/index.js';
import type { UnitSystem } from './show.js';
import { FEEL_ANSWER_WORDS, FEEL_QUESTION_WORDS } from './text/feel-words.js';

/**
 * What to do and to ask at a step of judging a soil by hand, for a person.
 *
 * @param question - a question of `nextFeelQuestion`
 * @param system - metric or US units
 * @returns one to three sentences that end in the question
 * @throws InputError for another question or system
 * @example
 * ```ts @import.meta.vitest
 * expect(describeFeelQuestion('ball', 'metric')).toContain('a ball?');
 * ```
 */
export function describeFeelQuestion(question: FeelQuestion, system: UnitSystem): string {
  demandChoice('question', question, Object.keys(FEEL_QUESTION_WORDS));
  demandChoice('system', system, ['metric', 'us']);
  return FEEL_QUESTION_WORDS[question](system);
}

/**
 * What an answer of judging a soil by hand means, for a person.
 *
 * @param answer - an answer of `nextFeelQuestion`
 * @param system - metric or US units
 * @returns a sentence
 * @throws InputError for another answer or system
 * @example
 * ```ts @import.meta.vitest
 * expect(describeFeelAnswer('ribbon over 50 mm', 'us')).toBe('It gets longer than 2 inches.');
 * ```
 */
export function describeFeelAnswer(answer: FeelAnswer, system: UnitSystem): string {
  demandChoice('answer', answer, FEEL_ANSWERS);
  demandChoice('system', system, ['metric', 'us']);
  return FEEL_ANSWER_WORDS[answer](system);
}
