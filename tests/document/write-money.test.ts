import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type MoneyForm, type MoneyRounding, writeMoney } from '../../src/document/index.js';
import { money } from '../../src/units/index.js';

/** Coins by whole-number arithmetic on the shortest decimal text of a number. */
const byDigits = (value: number, decimals: number, rounding: MoneyRounding): string => {
  const [, sign = '', whole = '', broken = '', power = '0'] = /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]\d+))?$/u.exec(String(value)) ?? [];
  const places = broken.length - Number(power) - decimals;
  const digits = BigInt(whole + broken);
  const coin = 10n ** BigInt(Math.max(0, places));
  const scaled = places >= 0 ? digits : digits * 10n ** BigInt(-places);
  const [coins, rest] = [scaled / coin, 2n * (scaled % coin)];
  const up = rest > coin || (rest === coin && (rounding === 'half up' || coins % 2n === 1n));
  const text = String(up ? coins + 1n : coins).padStart(decimals + 1, '0');
  const split = text.length - decimals;
  const written = decimals === 0 ? text : `${text.slice(0, split)}.${text.slice(split)}`;
  return /[1-9]/u.test(written) ? `${sign}${written}` : written;
};

const forms = fc.record({ decimals: fc.constantFrom(0, 2, 3), rounding: fc.constantFrom<MoneyRounding>('half up', 'half even') });
const amounts = fc.oneof(
  fc.double({ min: -1e9, max: 1e9, noNaN: true }),
  // Halves of a coin, which doubles hold only nearly.
  fc.tuple(fc.integer({ min: -1_000_000, max: 1_000_000 }), fc.constantFrom(1, 10, 100, 1000)).map(([coins, per]) => (2 * coins + 1) / (2 * per)),
);

describe('money is written', () => {
  it.each([
    [1.005, {}, '1.01'],
    [1.005, { rounding: 'half even' }, '1.00'],
    [1.015, { rounding: 'half even' }, '1.02'],
    [-1.005, {}, '-1.01'],
    [8.345, {}, '8.35'],
    [0.5, { decimals: 0 }, '1'],
    [0.5, { decimals: 0, rounding: 'half even' }, '0'],
    [1234.5675, { decimals: 3 }, '1234.568'],
    [-0, {}, '0.00'],
    [-0.004, {}, '0.00'],
    [1e15, {}, '1000000000000000.00'],
    [1e-9, { decimals: 3 }, '0.000'],
  ] as const)('%d %o as %s', (value, form: MoneyForm, text) => {
    expect(writeMoney(money(value), form)).toBe(text);
  });

  it('as whole-number arithmetic on its decimal digits has it', () => {
    fc.assert(
      fc.property(amounts, forms, (value, { decimals, rounding }) => {
        expect(writeMoney(money(value), { decimals, rounding })).toBe(byDigits(value, decimals, rounding));
      }),
      { numRuns: 500 },
    );
  });

  it('once: the sum of rounded parts may miss the rounded total', () => {
    const parts = [0.335, 0.335, 0.335];
    const total = parts.reduce((sum, each) => sum + each, 0);
    expect(writeMoney(money(total))).toBe('1.01');
    expect(parts.map((each) => writeMoney(money(each)))).toEqual(['0.34', '0.34', '0.34']);
  });

  it('not when it is none', () => {
    for (const value of [Number.NaN, Infinity, -Infinity, 1e308]) expect(() => writeMoney(money(value))).toThrow('value');
    expect(() => writeMoney(money(1), { decimals: 2.5 })).toThrow('decimals: 2.5');
    expect(() => writeMoney(money(1), { decimals: -1 })).toThrow('decimals: -1');
    expect(() => writeMoney(money(1), { rounding: 'down' as MoneyRounding })).toThrow('rounding: down');
  });
});
