import { KINDS, type Factor } from './kinds.data.js';

/** The name of a kind of quantity, for example `'conductivity'`. */
export type Kind = keyof typeof KINDS;

/** The names of the units in which a kind may be given, for example `'m' | 'ft' | …` for a length. */
export type UnitOf<K extends Kind> = keyof (typeof KINDS)[K]['units'] & string;

/**
 * A quantity: a plain number at run time, in the one fixed unit of its kind. The label exists for the compiler only,
 * which prints kind and unit when two quantities clash.
 */
export type Quantity<K extends Kind> = number & { readonly '~si': `${K} [${(typeof KINDS)[K]['si']}]` };

/** A quantity whose kind is known only at run time, with its kind beside it. */
export interface TaggedQuantity {
  /** What the number means; `count` is a plain number without a unit. */
  readonly kind: Kind | 'count';
  /** The number in the fixed unit of the kind. */
  readonly value: number;
}

/** A unit: called, it makes a quantity; its `of` reads a quantity in this unit. */
export interface Unit<K extends Kind> {
  /** A number of this unit as a quantity. */
  (value: number): Quantity<K>;
  /** A quantity as a number of this unit. */
  of(quantity: Quantity<K>): number;
}

/**
 * The exact factor of a unit, or nothing when the kind has no such unit.
 *
 * @param kind - the kind of quantity
 * @param name - a unit name as it stands in {@link KINDS}
 * @returns numerator, denominator and addend as decimal texts
 * @example
 * ```ts @import.meta.vitest
 * expect(factor('length', 'ft')).toEqual(['0.3048', '1', '0']);
 * expect(factor('length', 'furlong')).toBeUndefined();
 * ```
 */
export function factor(kind: Kind, name: string): Factor | undefined {
  return Object.entries<Factor>(KINDS[kind].units).find(([known]) => known === name)?.[1];
}

/**
 * Builds the callable unit of one kind. A constructor rounds once for each operation: it agrees with the exact document
 * border to two units in the last place, and for a temperature to a few units of the larger of its two terms.
 *
 * @param kind - the kind of quantity
 * @param name - one of the kind's units
 * @returns the callable unit
 * @throws TypeError when the kind has no such unit
 * @example
 * ```ts @import.meta.vitest
 * const chosen = unit('length', 'ft');
 * expect(chosen(10)).toBe(3.048);
 * expect(chosen.of(chosen(10))).toBe(10);
 * ```
 */
export function unit<K extends Kind>(kind: K, name: UnitOf<K>): Unit<K> {
  const found = factor(kind, name);
  if (found === undefined) throw new TypeError(`${JSON.stringify(name)} is no unit of ${kind}; known: ${Object.keys(KINDS[kind].units).join(', ')}`);
  const [numerator, denominator] = wholeNumbers(found[0], found[1]);
  const added = Number(found[2]);
  return Object.assign((value: number) => (((value + added) * numerator) / denominator) as Quantity<K>, {
    of: (quantity: Quantity<K>) => (quantity * denominator) / numerator - added,
  });
}

/** Numerator and denominator as whole numbers, which doubles hold exactly: 0.3048 / 1 becomes 3048 / 10000, and 6 ft exactly 1.8288 m. */
function wholeNumbers(numerator: string, denominator: string): readonly [number, number] {
  const places = Math.max(decimalsOf(numerator), decimalsOf(denominator));
  const scaled = (text: string): number => Number(text.replace('.', '') + '0'.repeat(places - decimalsOf(text)));
  return [scaled(numerator), scaled(denominator)];
}

const decimalsOf = (text: string): number => text.split('.')[1]?.length ?? 0;

/**
 * Makes a quantity of a kind that is chosen at run time.
 *
 * @param kind - the kind of quantity
 * @param value - the number in the given unit
 * @param name - one of the kind's units
 * @returns the quantity in the fixed unit of its kind
 * @example
 * ```ts @import.meta.vitest
 * expect(quantity('temperature', 50, 'degF')).toBe(10);
 * ```
 */
export function quantity<K extends Kind>(kind: K, value: number, name: UnitOf<K>): Quantity<K> {
  return unit(kind, name)(value);
}
