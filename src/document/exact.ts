import { Decimal } from 'decimal.js';
import { type Factor, factor, type Kind, KINDS } from '../units/index.js';

/** The unit system a document is written in. Input is read in any unit of the kind. */
export type UnitSystem = 'metric' | 'us';

/** Why a text is no quantity of a kind. */
export type Unreadable = 'no number and unit' | 'unknown unit' | 'not finite';

const DIGITS = 40;
const Exact = /* @__PURE__ */ Decimal.clone({ precision: DIGITS });

/** A decimal number, then one space and a unit. Kinds without a unit take the number alone. The minus sign of print, U+2212, is one too. */
const QUANTITY = /^([+\-−]?(?:\d+\.?\d*|\.\d+)(?:e[+\-−]?\d+)?)(?: (\S+))?$/iu;

/** The same number in a JSON Schema, which cannot compute: up to 1e199 by its digits, so that it is finite in every unit. */
export const NUMBER_PATTERN = '[+\\-−]?(\\d{1,90}(\\.\\d*)?|\\.\\d+)([eE]([\\-−]\\d+|\\+?0*1?\\d{1,2}))?';

/** Parts of the plain unit names, the other spellings that people type, and either of them as a pattern. */
const SPELLINGS: readonly (readonly [plain: string, typed: RegExp, either: string])[] = [
  ['deg', /°/gu, '(deg|°)'],
  ['.', /[·*]/gu, '[.·*]'],
  ['2', /²/gu, '[2²]'],
  ['3', /³/gu, '[3³]'],
];

const plainUnit = (name: string): string => SPELLINGS.reduce((text, [plain, typed]) => text.replace(typed, plain), name);

/** The pattern of the units of a kind in all their spellings. */
export function unitPattern(kind: Kind): string {
  const patterns = Object.keys(KINDS[kind].units).map((name) =>
    SPELLINGS.reduce((text, [plain, , either]) => text.replaceAll(plain, either), name.replace(/[()]/gu, '\\$&')),
  );
  return `(${patterns.join('|')})`;
}

/**
 * Reads a quantity from text, exactly: the result is the double nearest to the decimal value in the kind's fixed unit.
 *
 * @param kind - the kind the text must be of
 * @param text - a number, a space and a unit, for example `600 ft`
 * @returns the number in the fixed unit of the kind, or why there is none
 * @example
 * ```ts @import.meta.vitest
 * expect(readQuantity('length', '600 ft')).toBe(182.88);
 * expect(readQuantity('temperature difference', '18 degF')).toBe(10);
 * expect(readQuantity('length', '600')).toBe('no number and unit');
 * expect(readQuantity('length', '600 furlong')).toBe('unknown unit');
 * ```
 */
export function readQuantity(kind: Kind, text: string): number | Unreadable {
  const [, digits, unit = kind === 'ratio' ? '1' : ''] = QUANTITY.exec(text.trim()) ?? [];
  if (digits === undefined || unit === '') return 'no number and unit';
  const found = factor(kind, plainUnit(unit));
  if (found === undefined) return 'unknown unit';
  const value = exactFactor(found).toFixedUnit(new Exact(digits.replaceAll('−', '-')));
  return Number.isFinite(value) ? value : 'not finite';
}

/**
 * Writes a quantity as the shortest text that reads back as the same double.
 *
 * Where no text of forty digits in the reader's unit does so (a temperature within 1e-30 of 0 °C, in °F), the fixed
 * unit of the kind is used instead.
 *
 * @param kind - what the number means
 * @param value - the number in the fixed unit of the kind
 * @param system - the unit system to write in
 * @returns a number, a space and a unit
 * @example
 * ```ts @import.meta.vitest
 * expect(writeQuantity('length', 182.88, 'us')).toBe('600 ft');
 * expect(writeQuantity('temperature', -1.1, 'us')).toBe('30.02 degF');
 * expect(writeQuantity('flow', 0.00025, 'metric')).toBe('0.25 L/s');
 * ```
 */
export function writeQuantity(kind: Kind, value: number, system: UnitSystem): string {
  return shortest(kind, value, KINDS[kind][system]) ?? shortest(kind, value, KINDS[kind].si) ?? `${String(value)} ${KINDS[kind].si}`;
}

/** A factor whose numbers are read once. */
interface ExactFactor {
  readonly toFixedUnit: (given: Decimal) => number;
  readonly fromFixedUnit: (value: Decimal) => Decimal;
}

function exactFactor([numerator, denominator, added]: Factor): ExactFactor {
  const [top, bottom, shift] = [new Exact(numerator), new Exact(denominator), new Exact(added)];
  // A division by one and an addition of nothing cost as much as any other; adding also takes the sign off −0.
  const divided = (by: Decimal, of: Decimal): Decimal => (by.eq(1) ? of : of.div(by));
  return {
    toFixedUnit: (given) => divided(bottom, (shift.isZero() ? given : given.plus(shift)).times(top)).toNumber(),
    fromFixedUnit: (value) => {
      const scaled = divided(top, value.times(bottom));
      return shift.isZero() ? scaled : scaled.minus(shift);
    },
  };
}

/** Four roundings of a double; texts further off than this do not read back. */
const NEAR = 2 ** -50;
/** At most one text of so many digits reads back as a given double, so a rounded quotient finds it as well as an exact one. */
const ONLY = 15;

function shortest(kind: Kind, value: number, unit: string): string | undefined {
  const written = (digits: string): string => (kind === 'ratio' ? digits : `${digits} ${unit}`);
  // The shortest text of a double reads back as that double.
  if (unit === KINDS[kind].si) return written(Object.is(value, -0) ? '-0' : String(value));
  const found = factor(kind, unit);
  if (found === undefined) return undefined;
  const { toFixedUnit, fromFixedUnit } = exactFactor(found);
  const readsBack = (digits: Decimal): boolean => Object.is(toFixedUnit(digits), value);
  if (Object.is(value, -0)) return readsBack(new Exact('-0')) ? written('-0') : undefined;
  const [scale, added] = [Number(found[0]) / Number(found[1]), Number(found[2])];
  if (added === 0) {
    const rounded = Number((value / scale).toPrecision(ONLY));
    // Doubles tell most misses at once; what they cannot tell is computed exactly.
    if (Math.abs(rounded * scale - value) <= NEAR * Math.abs(value) && readsBack(new Exact(rounded))) return written(String(rounded));
  }
  // The digits of the double itself: its shortest decimal text lies beside it, and the shortest text in another unit may be lost.
  const inUnit = fromFixedUnit(new Exact(value.toPrecision(DIGITS)));
  // A sum that nearly cancels has fewer digits than a double.
  const lost = added === 0 ? -1 : Math.ceil(Math.max(0, Math.log10(Math.abs(value / scale / inUnit.toNumber()))));
  for (let digits = Math.max(1, ONLY - lost); digits <= DIGITS; digits += 1) {
    const tried = inUnit.toSignificantDigits(digits);
    if (readsBack(tried)) return written(tried.toString());
  }
  return undefined;
}
