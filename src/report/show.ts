import { demand, demandChoice } from '../errors/index.js';
import { factor, type Kind } from '../units/index.js';
import { PEOPLE, type Written } from './people.data.js';
import { monthDay } from './month-day.js';

/** The unit system a person reads in; chosen for each call. */
export type UnitSystem = 'metric' | 'us';

/**
 * Writes a quantity for a person: rounded to what a reader can use, in the units of the trade.
 *
 * @param system - metric or US units
 * @returns a function of kind and number (in the kind's fixed unit) that gives the text
 * @throws InputError for another system, and from the function for a number that is not finite
 * @example
 * ```ts @import.meta.vitest
 * expect(show('us')('pipe length', 182.88)).toBe('600 ft');
 * expect(show('metric')('temperature', -0.04)).toBe('0.0 °C');
 * expect(show('us')('power', 7033.7)).toBe('24,000 Btu/h');
 * expect(show('us')('day of year', 32.5)).toBe('1 February');
 * expect([1800, 9000, 86_400].map((time) => show('metric')('time', time))).toEqual(['30 min', '2.5 h', '24 h']);
 * ```
 */
export function show(system: UnitSystem): (kind: Kind, value: number) => string {
  demandChoice('system', system, ['metric', 'us']);
  return (kind, value) => {
    demand('value', kind, value);
    if (kind === 'day of year') return monthDay(value);
    return kind === 'time' ? spellTime(value, system) : spell(inUnit(kind, system, value), PEOPLE[kind][system], system);
  };
}

/**
 * Writes the parts of a total so that what is printed adds up to the total as it is printed: the last digits go to the largest remainders.
 *
 * @param system - metric or US units
 * @returns a function of kind, parts and their total (in the kind's fixed unit) that gives one text for each part
 * @throws InputError from the function for a number that is not finite
 * @example
 * ```ts @import.meta.vitest
 * expect(showParts('metric')('temperature difference', [6.24, 1.53, 3.14], 10.91)).toEqual(['6.3 K', '1.5 K', '3.1 K']);
 * ```
 */
export function showParts(system: UnitSystem): (kind: Kind, parts: readonly number[], total: number) => readonly string[] {
  return (kind, parts, total) => {
    for (const part of [...parts, total]) demand('value', kind, part);
    const written = PEOPLE[kind][system];
    const scale = 10 ** written.decimals;
    const steps = parts.map((part) => inUnit(kind, system, part) * scale);
    const whole = steps.map(Math.floor);
    const left = Math.round(Number(inUnit(kind, system, total).toFixed(written.decimals)) * scale) - whole.reduce((sum, step) => sum + step, 0);
    const remainder = (index: number): number => (steps[index] ?? 0) - (whole[index] ?? 0);
    const byRemainder = [...parts.keys()].sort((a, b) => remainder(b) - remainder(a));
    const raised = new Set(byRemainder.slice(0, Math.max(left, 0)));
    return whole.map((step, index) => spell((step + (raised.has(index) ? 1 : 0)) / scale, written, system));
  };
}

function inUnit(kind: Kind, system: UnitSystem, value: number): number {
  const [numerator = 1, denominator = 1, added = 0] = (factor(kind, PEOPLE[kind][system].unit) ?? []).map(Number);
  return (value * denominator) / numerator - added;
}

/** Minutes below two hours; then hours, with a tenth below a hundred of them unless they are whole. */
function spellTime(seconds: number, system: UnitSystem): string {
  const hours = seconds / 3600;
  if (Math.abs(hours) < 2) return spell(60 * hours, { decimals: 0, spelled: 'min' }, system);
  const whole = Math.abs(hours) >= 100 || Number.isInteger(Number(hours.toFixed(1)));
  return spell(hours, { decimals: whole ? 0 : 1, spelled: 'h' }, system);
}

/** Between groups of three digits: a space that holds the line together, or the comma of the US. */
const GROUP: Readonly<Record<UnitSystem, string>> = { metric: '\u00A0', us: ',' };

/** Rounds and spells; numbers of five digits and more are grouped. */
function spell(number: number, { decimals, spelled }: Pick<Written, 'decimals' | 'spelled'>, system: UnitSystem): string {
  const rounded = number.toFixed(decimals);
  const signed = Number(rounded) === 0 ? rounded.replace('-', '') : rounded.replace('-', '−');
  const digits = signed.replace(/\d{5,}(?=\.|$)/u, (whole) => whole.replaceAll(/\B(?=(?:\d{3})+$)/gu, GROUP[system]));
  return spelled === '' ? digits : `${digits} ${spelled}`;
}
