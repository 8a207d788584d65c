import { Decimal } from 'decimal.js';
import { demand, demandChoice } from '../errors/index.js';
import type { Money } from '../units/index.js';

/** Which way an amount goes that lies just between two coins: away from zero, or to the even one. */
export type MoneyRounding = 'half up' | 'half even';

/** How money is written. */
export interface MoneyForm {
  /** Digits after the point that the currency has, 0 to 4; 2 when left out. */
  readonly decimals?: number;
  /** Which way a half goes; `half up`, as on a bill, when left out. */
  readonly rounding?: MoneyRounding;
}

/**
 * Writes money for a bill: rounded once, by decimal arithmetic, from the shortest decimal text of the number, so that 1.005 is a half and not what a double
 * makes of it.
 *
 * Round a total, not its parts: rounded parts may miss a rounded total by their last digit. The currency stands beside it and is the caller's to write.
 *
 * @param value - money [cur], within ±1e15
 * @param form - digits and rounding
 * @returns digits with that many decimals
 * @throws InputError when the number is no money or the form is unknown
 * @example
 * ```ts @import.meta.vitest
 * const { money } = await import('../units/index.js');
 * expect(writeMoney(money(1.005))).toBe('1.01');
 * expect(writeMoney(money(1.005), { rounding: 'half even' })).toBe('1.00');
 * expect(writeMoney(money(-2.5), { decimals: 0 })).toBe('-3');
 * expect(writeMoney(money(-0.001))).toBe('0.00');
 * expect((1.005).toFixed(2)).toBe('1.00');
 * ```
 */
export function writeMoney(value: Money, { decimals = 2, rounding = 'half up' }: MoneyForm = {}): string {
  demand('value', 'money', value, { atLeast: -1e15, atMost: 1e15 });
  demand('decimals', 'count', decimals, { atLeast: 0, atMost: 4 });
  demandChoice('rounding', rounding, ['half up', 'half even']);
  const rounded = new Decimal(value).toDecimalPlaces(decimals, rounding === 'half up' ? Decimal.ROUND_HALF_UP : Decimal.ROUND_HALF_EVEN);
  // A debt that rounds to nothing is nothing.
  return (rounded.isZero() ? rounded.abs() : rounded).toFixed(decimals);
}
