import { describe, expect, it } from 'vitest';
import {
  FEEL_ANSWERS,
  nextFeelQuestion,
  TEXTURE_CLASSES,
  textureByFeel,
  type FeelAnswer,
  type TextureByFeel,
  type TextureClass,
} from '../../src/soil/index.js';
import { faultsOf, refuses } from '../support/bad-input.js';

/** Every path by hand, walked as an app would walk it: question by question, by what each answer leads to. */
function paths(answers: readonly FeelAnswer[] = []): readonly { readonly answers: readonly FeelAnswer[]; readonly texture: TextureClass }[] {
  const path = nextFeelQuestion(answers);
  return path.at === 'texture' ? [{ answers, texture: path.texture }] : path.choices.flatMap(({ answer }) => paths([...answers, answer]));
}

/** The diagram after Thien: ribbon up to an inch, up to two, beyond; gritty, smooth, neither. */
const DIAGRAM: Readonly<Record<string, TextureClass>> = {
  'no ball': 'sand',
  'ball, no ribbon': 'loamy sand',
  'ball, ribbon under 25 mm, gritty': 'sandy loam',
  'ball, ribbon under 25 mm, smooth': 'silt loam',
  'ball, ribbon under 25 mm, neither': 'loam',
  'ball, ribbon of 25 to 50 mm, gritty': 'sandy clay loam',
  'ball, ribbon of 25 to 50 mm, smooth': 'silty clay loam',
  'ball, ribbon of 25 to 50 mm, neither': 'clay loam',
  'ball, ribbon over 50 mm, gritty': 'sandy clay',
  'ball, ribbon over 50 mm, smooth': 'silty clay',
  'ball, ribbon over 50 mm, neither': 'clay',
};

describe('the path by hand', () => {
  it('ends where the diagram does', () => {
    expect(Object.fromEntries(paths().map(({ answers, texture }) => [answers.join(', '), texture]))).toEqual(DIAGRAM);
  });

  it('leads to every class once, but to silt, which the hand cannot tell from silt loam', () => {
    expect(
      paths()
        .map(({ texture }) => texture)
        .sort(),
    ).toEqual(TEXTURE_CLASSES.filter((texture) => texture !== 'silt').sort());
    expect(new Set(paths().flatMap(({ answers }) => answers))).toEqual(new Set(FEEL_ANSWERS));
  });

  it('says beforehand what each answer leads to', () => {
    const walk = (answers: readonly FeelAnswer[]): void => {
      const path = nextFeelQuestion(answers);
      if (path.at === 'texture') return;
      for (const { answer, leadsTo } of path.choices) {
        expect(nextFeelQuestion([...answers, answer])).toMatchObject(leadsTo);
        walk([...answers, answer]);
      }
    };
    walk([]);
    expect(nextFeelQuestion([])).toMatchObject({ at: 'question', question: 'ball' });
  });

  it('cannot be walked where it does not lead', () => {
    expect(() => nextFeelQuestion(['gritty'])).toThrow('answers.0: gritty is not allowed; allowed: "no ball", "ball"');
    expect(() => nextFeelQuestion(['no ball', 'no ribbon'])).toThrow('the path has ended at sand');
    expect(() => textureByFeel(['ball'])).toThrow('answers.1: nothing is not allowed; allowed: "no ribbon"');
    expect(() => textureByFeel([])).toThrow('answers.0');
    for (const given of [undefined, null, 'ball', [null], [5], ['ball', undefined]]) {
      expect(() => nextFeelQuestion(given as never)).toThrow(expect.objectContaining({ name: 'InputError' }));
    }
  });
});

describe('textureByFeel', () => {
  const run = ({ answers }: { readonly answers: readonly FeelAnswer[] }): TextureByFeel => textureByFeel(answers);

  it.each(paths())('$texture: the classes beside it, and how often people are right', ({ answers, texture }) => {
    const found = textureByFeel(answers);
    expect(found.texture).toBe(texture);
    expect(found.neighbours).not.toContain(texture);
    expect(found.neighbours.length).toBeGreaterThan(0);
    // Shares of the two studies as their abstracts have them.
    expect(found.scores.map(({ right, withinOneClass }) => [right, withinOneClass])).toEqual([
      [0.66, 0.91],
      [0.38, 0.71],
      [0.46, undefined],
      [0.45, undefined],
    ]);
  });

  it('refuses what is no answer', () => {
    refuses(run, { answers: { list: FEEL_ANSWERS } }, { answers: ['ball', 'ribbon over 50 mm', 'smooth'] });
    expect(
      faultsOf(
        ({ answers }: { readonly answers: readonly FeelAnswer[] }) => nextFeelQuestion(answers),
        { answers: { list: FEEL_ANSWERS } },
        { answers: ['ball'] },
      ),
      // No answers yet are the start of the path.
    ).toEqual(['answers empty: accepted']);
  });
});
