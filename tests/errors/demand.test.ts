import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AllowedRange, demand, demandChoice, demandCount, demandObject, InputError, locate } from '../../src/errors/index.js';
import { type Kind, KINDS } from '../../src/units/index.js';

/** The refusal of a call; fails when it is not refused, or by another error. */
function refusal(run: () => unknown): InputError {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error('not refused');
}
const accepted = (run: () => unknown): boolean => {
  try {
    run();
    return true;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
};
/** What a caller without a type checker may pass for a number, a text or a list. */
const anything = (value: unknown): never => value as never;

const WRONG: readonly (readonly [given: unknown, code: string, shown: string | undefined])[] = [
  [undefined, 'missing', undefined],
  [null, 'missing', undefined],
  ['5', 'wrong-type', '"5"'],
  ['', 'wrong-type', '""'],
  [true, 'wrong-type', 'true'],
  [[5], 'wrong-type', 'a list'],
  [{ valueOf: () => 5 }, 'wrong-type', 'an object'],
  [Object.create(null), 'wrong-type', 'an object'],
  [5n, 'wrong-type', '5'],
  [Symbol('five'), 'wrong-type', 'Symbol(five)'],
];

describe('demand', () => {
  it.each(WRONG)('refuses %o as %s', (given, code, shown) => {
    const error = refusal(() => demand('soil.depth', 'length', anything(given), { above: 0 }, 'measure it'));
    expect(error).toMatchObject({ code, argument: 'soil.depth', value: shown, allowed: 'a finite length above 0', hint: 'measure it' });
  });

  it.each([NaN, Infinity, -Infinity])('refuses %s whatever the range', (value) => {
    for (const range of [{}, { above: -Infinity }, { atLeast: -Infinity, atMost: Infinity }]) {
      expect(refusal(() => demand('depth', 'length', value, range))).toMatchObject({ code: 'not-finite', value: { kind: 'length', value } });
    }
  });

  it('accepts exactly the range, for every combination of bounds', () => {
    const number = fc.oneof(fc.integer({ min: -3, max: 3 }), fc.double({ min: -1e9, max: 1e9, noNaN: true }));
    const range = fc.record({ above: number, atLeast: number, below: number, atMost: number }, { requiredKeys: [] });
    fc.assert(
      fc.property(number, range, fc.constantFrom<Kind>('length', 'temperature', 'ratio'), (value, bounds, kind) => {
        const inside =
          (bounds.above === undefined || value > bounds.above) &&
          (bounds.atLeast === undefined || value >= bounds.atLeast) &&
          (bounds.below === undefined || value < bounds.below) &&
          (bounds.atMost === undefined || value <= bounds.atMost);
        expect(accepted(() => demand('x', kind, value, bounds))).toBe(inside);
        if (inside) return;
        const { code, allowed } = refusal(() => demand('x', kind, value, bounds));
        expect(code).toBe('out-of-range');
        for (const bound of Object.values(bounds)) expect(allowed).toContain(String(Number(bound.toPrecision(6))));
        expect(allowed.split(' and ')).toHaveLength(Math.max(Object.keys(bounds).length, 1));
      }),
      { numRuns: 1000 },
    );
  });

  it('shows a limit to six digits and keeps to the limit itself', () => {
    const most = 7400 / 1.05;
    expect(refusal(() => demand('power', 'power', 8000, { atMost: most })).allowed).toBe('a finite power at most 7047.62');
    expect(accepted(() => demand('power', 'power', most, { atMost: most }))).toBe(true);
    expect(accepted(() => demand('power', 'power', 7047.62, { atMost: most }))).toBe(false);
  });

  it.each<[AllowedRange, string]>([
    [{}, 'a finite density'],
    [{ above: 0 }, 'a finite density above 0'],
    [{ atLeast: 1 }, 'a finite density at least 1'],
    [{ below: 5 }, 'a finite density below 5'],
    [{ atMost: 5 }, 'a finite density at most 5'],
    [{ above: 0, atMost: 5 }, 'a finite density above 0 and at most 5'],
    [{ atLeast: 1, below: 5 }, 'a finite density at least 1 and below 5'],
  ])('says what %o allows', (range, allowed) => {
    expect(refusal(() => demand('x', 'density', NaN, range)).allowed).toBe(allowed);
  });

  it('lets nothing pass a bound that is no number', () => {
    for (const bound of ['above', 'atLeast', 'below', 'atMost']) {
      expect(accepted(() => demand('x', 'length', 1, { [bound]: NaN }))).toBe(false);
    }
  });

  it('takes whole numbers only for a count', () => {
    expect(accepted(() => demand('trenches', 'count', 4, { atLeast: 1 }))).toBe(true);
    expect(refusal(() => demand('trenches', 'count', 4.5, { atLeast: 1 }))).toMatchObject({
      code: 'out-of-range',
      allowed: 'a whole number at least 1',
    });
    expect(refusal(() => demand('trenches', 'count', 0, { atLeast: 1 })).code).toBe('out-of-range');
    expect(refusal(() => demand('trenches', 'count', NaN)).code).toBe('not-finite');
  });

  it('takes every kind', () => {
    for (const kind of Object.keys(KINDS) as Kind[]) {
      demand('x', kind, 1);
      expect(refusal(() => demand('x', kind, NaN)).message).toBe(`x: NaN (${kind}) is not allowed; allowed: a finite ${kind}`);
    }
  });
});

describe('demandChoice', () => {
  it('takes the choices and refuses everything else by name', () => {
    fc.assert(
      fc.property(fc.oneof(fc.constantFrom('dry', 'wet'), fc.string()), (text) => {
        expect(accepted(() => demandChoice('basis', text, ['dry', 'wet']))).toBe(text === 'dry' || text === 'wet');
      }),
    );
    expect(refusal(() => demandChoice('basis', 'Dry', ['dry', 'wet']))).toMatchObject({
      code: 'unknown-choice',
      argument: 'basis',
      value: 'Dry',
      allowed: '"dry", "wet"',
    });
    // Some choices hold commas themselves, so each stands in marks.
    expect(refusal(() => demandChoice('state', 'wet', ['saturated', 'saturated, frozen'])).allowed).toBe('"saturated", "saturated, frozen"');
    expect(accepted(() => demandChoice('basis', 'toString', ['dry', 'wet']))).toBe(false);
  });

  it.each(WRONG.filter(([given]) => typeof given !== 'string'))('refuses %o as %s', (given, code, shown) => {
    expect(refusal(() => demandChoice('basis', anything(given), ['dry', 'wet']))).toMatchObject({ code, argument: 'basis', value: shown });
  });
});

describe('demandCount', () => {
  it('accepts exactly the lengths between least and most', () => {
    const small = fc.nat({ max: 6 });
    fc.assert(
      fc.property(small, small, fc.option(small, { nil: undefined }), (length, least, most) => {
        const list = Array.from({ length }, () => 0);
        const inside = length >= least && length <= (most ?? Infinity);
        expect(accepted(() => demandCount('layers', list, least, most))).toBe(inside);
        if (inside) return;
        const error = refusal(() => demandCount('layers', list, least, most));
        expect(error).toMatchObject({ code: length < least ? 'too-few' : 'too-many', value: { kind: 'count', value: length } });
      }),
    );
  });

  it.each<[number, number | undefined, string]>([
    [1, undefined, 'at least 1 entry'],
    [2, undefined, 'at least 2 entries'],
    [12, 12, 'exactly 12 entries'],
    [1, 1, 'exactly 1 entry'],
    [1, 12, '1 to 12 entries'],
  ])('says that %s to %s are %s', (least, most, allowed) => {
    expect(refusal(() => demandCount('months', [], least, most)).allowed).toBe(allowed);
  });

  it.each([undefined, null, 'abc', 5, { length: 3 }, new Float64Array(3)])('refuses %o, which is no list', (given) => {
    const code = given === undefined || given === null ? 'missing' : 'wrong-type';
    expect(refusal(() => demandCount('layers', anything(given), 1))).toMatchObject({
      code,
      argument: 'layers',
      allowed: 'a list of at least 1 entry',
    });
  });
});

describe('demandObject', () => {
  it('takes objects only', () => {
    demandObject('pipe', {});
    for (const given of [undefined, null, 5, 'text', true, [], [1]]) {
      const code = given === undefined || given === null ? 'missing' : 'wrong-type';
      expect(refusal(() => demandObject('pipe', anything(given)))).toMatchObject({ code, argument: 'pipe', allowed: 'an object' });
    }
  });
});

describe('locate', () => {
  it('gives the result through and places a refusal', () => {
    expect(locate('layers.2', () => 5)).toBe(5);
    const error = refusal(() => locate('plan', () => locate('layers.2', () => demand('depth', 'length', -1, { above: 0 }, 'downwards counts'))));
    expect(error).toMatchObject({ argument: 'plan.layers.2.depth', pointer: '/plan/layers/2/depth', code: 'out-of-range', hint: 'downwards counts' });
  });

  it('leaves other errors alone', () => {
    const fault = new RangeError('stack');
    expect(() =>
      locate('layers.2', () => {
        throw fault;
      }),
    ).toThrow(fault);
  });
});
