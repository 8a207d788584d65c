import { demandChoice, demandCount, InputError, quotedChoices } from '../errors/index.js';
import {
  FEEL_QUESTIONS,
  FEEL_SCORES,
  type FeelAnswer,
  type FeelChoice,
  type FeelLead,
  type FeelQuestion,
  type FeelScore,
} from './texture-by-feel.data.js';
import { TEXTURE_NEIGHBOURS } from './texture-neighbours.data.js';
import type { TextureClass } from './texture.js';

/** Where the path by hand stands: at a question, with what may be answered, or at its end. */
export type FeelPath =
  | {
      /** A question is open. */
      readonly at: 'question';
      /** The question. */
      readonly question: FeelQuestion;
      /** What may be answered, and where each answer leads. */
      readonly choices: readonly FeelChoice[];
    }
  | {
      /** The path has ended. */
      readonly at: 'texture';
      /** The class it ended in. */
      readonly texture: TextureClass;
    };

/** Texture found by hand, and how far to trust it. */
export interface TextureByFeel {
  /** The class that the answers lead to. */
  readonly texture: TextureClass;
  /** The classes beside it in the triangle, one of which it often is. */
  readonly neighbours: readonly TextureClass[];
  /** How often people are right by hand, study by study; the studies disagree. */
  readonly scores: readonly FeelScore[];
}

/**
 * Where the path by hand stands after some answers: the next question with what may be answered, or the class at the end.
 *
 * An app shows `question` and `choices`, appends what was chosen to its list of answers and calls again. Words for a person are in
 * `loamloop/report`.
 *
 * @param answers - the answers so far, from the first question on; none at the start
 * @returns the next question with its answers and where they lead, or the class
 * @throws InputError for an answer that the question does not have, or one after the end; `answers.1` names the second
 * @remarks
 * After Thien (`thien1979`). Silt cannot be told from silt loam by hand and is no end of the path.
 *
 * Invariants: every path ends after at most three answers; every class but silt is the end of exactly one.
 * @example
 * ```ts @import.meta.vitest
 * const path = nextFeelQuestion(['ball']);
 * expect(path.at === 'question' && path.choices.map(({ answer }) => answer)).toContain('no ribbon');
 * expect(nextFeelQuestion(['no ball'])).toEqual({ at: 'texture', texture: 'sand' });
 * ```
 */
export function nextFeelQuestion(answers: readonly FeelAnswer[]): FeelPath {
  demandCount('answers', answers, 0);
  return answers.reduce<FeelPath>(
    (path, answer, index) => follow(path, answer, `answers.${String(index)}`),
    pathAt({ at: 'question', question: 'ball' }),
  );
}

/**
 * Texture class by hand, from the answers along the path of {@link nextFeelQuestion}, with how often such a judgement is right.
 *
 * @param answers - all answers, from the first question to the end
 * @returns the class, its neighbours and how often people were right in studies [1]
 * @throws InputError for answers that do not follow the path, or stop before its end
 * @remarks Sources: `thien1979` (path), `textureByFeel2017` and `feelProficiency` (how often people are right). Invariants: see {@link nextFeelQuestion}.
 * @example
 * ```ts @import.meta.vitest
 * const { texture, neighbours, scores } = textureByFeel(['ball', 'ribbon under 25 mm', 'neither']);
 * expect(texture).toBe('loam');
 * expect(neighbours).toContain('silt loam');
 * expect(scores[0]?.right).toBe(0.66);
 * ```
 */
export function textureByFeel(answers: readonly FeelAnswer[]): TextureByFeel {
  const path = nextFeelQuestion(answers);
  if (path.at === 'question') {
    const argument = `answers.${String(answers.length)}`;
    throw new InputError({
      code: 'missing',
      argument,
      value: undefined,
      allowed: quotedChoices(path.choices.map(({ answer }) => answer)),
    });
  }
  return { texture: path.texture, neighbours: TEXTURE_NEIGHBOURS[path.texture], scores: FEEL_SCORES };
}

function pathAt(lead: FeelLead): FeelPath {
  return lead.at === 'texture' ? lead : { ...lead, choices: FEEL_QUESTIONS[lead.question] };
}

function follow(path: FeelPath, given: FeelAnswer, argument: string): FeelPath {
  if (path.at === 'texture') {
    throw new InputError({ code: 'surplus', argument, value: String(given), allowed: `no answer; the path has ended at ${path.texture}` });
  }
  demandChoice(
    argument,
    given,
    path.choices.map(({ answer }) => answer),
  );
  return path.choices.reduce<FeelPath>((found, { answer, leadsTo }) => (answer === given ? pathAt(leadsTo) : found), path);
}
