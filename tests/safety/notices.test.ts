import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/errors/index.js';
import { NOTICES, noticesFor, type Situation, SITUATIONS } from '../../src/safety/index.js';
import { ETHANOL, mixtureFlashPoint } from '../../src/fluid/index.js';
import { REFERENCES } from '../../src/references/index.js';
import { massPercent } from '../../src/units/index.js';

const situations = SITUATIONS;
const some = fc.array(fc.constantFrom(...situations), { maxLength: 15 });
const codesFor = (given: readonly Situation[]): readonly string[] => noticesFor(given).map(({ code }) => code);
const always = NOTICES.filter(({ situation }) => situation === 'always').map(({ code }) => code);

describe('the notices', () => {
  it('say something under a code of their own, with a source', () => {
    const codes = NOTICES.map(({ code }) => code);
    expect(new Set(codes).size).toBe(codes.length);
    for (const { code, text, source, situation } of NOTICES) {
      expect(code).toMatch(/^[a-z]+(?:-[a-z]+)*$/u);
      expect(text).toMatch(/^\p{Lu}.{30,}[.]$/su);
      expect(source === 'common practice' || Object.hasOwn(REFERENCES, source)).toBe(true);
      expect(situations).toContain(situation);
    }
  });

  it.each(situations)('have something to say when it is %s', (situation) => {
    expect(NOTICES.some((notice) => notice.situation === situation)).toBe(true);
  });

  it('give temperatures and lengths in both systems', () => {
    for (const { text } of NOTICES) {
      expect(/°C/u.test(text)).toBe(/°F/u.test(text));
      expect(/\bmetres?\b/u.test(text)).toBe(/\b(?:feet|foot)\b/u.test(text));
    }
  });
});

describe('the notice of alcohols', () => {
  it('gives the flash point that the mixture has, and in both systems the same', () => {
    const text = NOTICES.find(({ code }) => code === 'alcohol')?.text ?? '';
    const [, mass, metric, us] = (/(\d+) % by mass.*?(\d+) °C \((\d+) °F\)/u.exec(text) ?? []).map(Number);
    expect(Math.round(mixtureFlashPoint({ fluid: ETHANOL, massFraction: massPercent(mass ?? NaN) }).flashPoint)).toBe(metric);
    expect(Math.round(32 + 1.8 * (metric ?? NaN))).toBe(us);
  });
});

describe('noticesFor', () => {
  it('always has those for always, whatever it is asked', () => {
    expect(always.length).toBeGreaterThan(0);
    expect(codesFor([])).toEqual(always);
    fc.assert(
      fc.property(some, (given) => {
        expect(codesFor(given)).toEqual(expect.arrayContaining(always));
      }),
    );
  });

  it('has exactly those of the situations, in the order of the work, each once', () => {
    fc.assert(
      fc.property(some, (given) => {
        expect(noticesFor(given)).toEqual(NOTICES.filter(({ situation }) => situation === 'always' || given.includes(situation)));
      }),
    );
  });

  it('never says less for more situations', () => {
    fc.assert(
      fc.property(some, some, (given, more) => {
        expect(codesFor([...given, ...more])).toEqual(expect.arrayContaining([...codesFor(given)]));
      }),
    );
  });

  it('cannot be emptied through its answer', () => {
    const answer = noticesFor(['digging']) as unknown[];
    answer.length = 0;
    expect(codesFor(['digging'])).toContain('trench-collapse');
  });

  it('refuses a situation that it does not know, so that no notice is lost to a slip of the pen', () => {
    for (const given of [['diging'], [undefined], [5], ['digging', 'toString']]) expect(() => noticesFor(given as never)).toThrow(InputError);
    for (const given of [undefined, null, 'digging']) expect(() => noticesFor(given as never)).toThrow(InputError);
    expect(() => noticesFor(['digging', 'diging'] as never)).toThrow('situations.1: diging is not allowed; allowed: "always", "digging"');
  });
});
