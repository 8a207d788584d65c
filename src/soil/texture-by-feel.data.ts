import type { ReferenceKey } from '../references/index.js';
import type { Fraction } from '../units/index.js';
import type { TextureClass } from './texture.js';

/** A question that the hand answers. */
export type FeelQuestion = 'ball' | 'ribbon' | 'grain of a loam' | 'grain of a clay loam' | 'grain of a clay';

/** An answer to one of the questions. */
export type FeelAnswer = (typeof FEEL_ANSWERS)[number];

/** Every answer, for lists and shapes. */
export const FEEL_ANSWERS = [
  'no ball',
  'ball',
  'no ribbon',
  'ribbon under 25 mm',
  'ribbon of 25 to 50 mm',
  'ribbon over 50 mm',
  'gritty',
  'smooth',
  'neither',
] as const;

/** Where an answer leads: to another question, or to a class of the triangle. */
export type FeelLead =
  | {
      /** Another question follows. */
      readonly at: 'question';
      /** The question. */
      readonly question: FeelQuestion;
    }
  | {
      /** The path ends. */
      readonly at: 'texture';
      /** The class it ends in. */
      readonly texture: TextureClass;
    };

/** An answer that a question allows, and where it leads. */
export interface FeelChoice {
  /** The answer. */
  readonly answer: FeelAnswer;
  /** The question it leads to, or the class it ends in. */
  readonly leadsTo: FeelLead;
}

const ask = (answer: FeelAnswer, question: FeelQuestion): FeelChoice => ({ answer, leadsTo: { at: 'question', question } });
const end = (answer: FeelAnswer, texture: TextureClass): FeelChoice => ({ answer, leadsTo: { at: 'texture', texture } });

/** The path by hand, question by question from the first; each answer leads further down or to a class. Source: `thien1979`; the first question recalled. */
export const FEEL_QUESTIONS: Readonly<Record<FeelQuestion, readonly FeelChoice[]>> = /* @__PURE__ */ (() => ({
  ball: [end('no ball', 'sand'), ask('ball', 'ribbon')],
  ribbon: [
    end('no ribbon', 'loamy sand'),
    ask('ribbon under 25 mm', 'grain of a loam'),
    ask('ribbon of 25 to 50 mm', 'grain of a clay loam'),
    ask('ribbon over 50 mm', 'grain of a clay'),
  ],
  'grain of a loam': [end('gritty', 'sandy loam'), end('smooth', 'silt loam'), end('neither', 'loam')],
  'grain of a clay loam': [end('gritty', 'sandy clay loam'), end('smooth', 'silty clay loam'), end('neither', 'clay loam')],
  'grain of a clay': [end('gritty', 'sandy clay'), end('smooth', 'silty clay'), end('neither', 'clay')],
}))();

/** How often a study found people to name the laboratory's class by hand. */
export interface FeelScore {
  /** Who judged. */
  readonly observer: 'professional' | 'seasonal staff' | 'student after a term';
  /** Share of samples named rightly [1]. */
  readonly right: Fraction;
  /** Share named rightly or by a neighbouring class; absent where the study does not say [1]. */
  readonly withinOneClass?: Fraction;
  /** The study. */
  readonly source: ReferenceKey;
}

/** Two studies; they disagree about professionals. */
export const FEEL_SCORES: readonly FeelScore[] = [
  { observer: 'professional', right: 0.66 as Fraction, withinOneClass: 0.91 as Fraction, source: 'textureByFeel2017' },
  { observer: 'seasonal staff', right: 0.38 as Fraction, withinOneClass: 0.71 as Fraction, source: 'textureByFeel2017' },
  { observer: 'professional', right: 0.46 as Fraction, source: 'feelProficiency' },
  { observer: 'student after a term', right: 0.45 as Fraction, source: 'feelProficiency' },
];
