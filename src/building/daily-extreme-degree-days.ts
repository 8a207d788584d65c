import { demand, demandChoice } from '../errors/index.js';
import type { DegreeDays, Shape, Temperature } from '../units/index.js';
import { OUTDOOR } from './checks.js';
import type { MonthDegreeDays } from './degree-days.js';

/**
 * What stands for the course of a day of which only the highest and the lowest temperature are known.
 *
 * - `middle`: the day is taken at the middle of the two; days about the base lose their cold hours.
 * - `four cases`: the British and Irish rule, in which a day that crosses the base counts for the part of it that lies beyond.
 */
export type DailyExtremeRule = 'middle' | 'four cases';

/** What {@link dailyExtremeDegreeDays} needs. */
export interface DailyExtremeInput {
  /** Which rule. */
  readonly rule: DailyExtremeRule;
  /** Highest temperature of the day, −95 to 65, not below the lowest [degC]. */
  readonly highest: Temperature;
  /** Lowest temperature of the day, −95 to 65 [degC]. */
  readonly lowest: Temperature;
  /** Temperature counted from, −95 to 65 [degC]. */
  readonly base: Temperature;
}

/** Shape of {@link DailyExtremeInput}. */
export const dailyExtremeInputShape: Shape<DailyExtremeInput> = {
  rule: ['middle', 'four cases'],
  highest: 'temperature',
  lowest: 'temperature',
  base: 'temperature',
};

/**
 * Degree days of one day from its highest and lowest temperature.
 *
 * @param input - highest and lowest temperature and base [degC], and the rule
 * @returns heating and cooling degree days of the day [K.d]
 * @throws InputError when a number is impossible or the highest is below the lowest
 * @remarks
 * With the middle M and the base B, four cases: highest ≤ B gives B − M; lowest ≥ B gives none; M ≤ B < highest gives (B − lowest)/2 − (highest − B)/4; lowest < B < M gives
 * (B − lowest)/4. Cooling is the mirror image. Source: `irishDegreeDays`. The two cases within meet where M = B.
 *
 * Invariants: heating − cooling = B − M by either rule; the four cases never count less than the middle.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('../units/index.js');
 * const day = { highest: celsius(18), lowest: celsius(9), base: celsius(15.5) };
 * expect(dailyExtremeDegreeDays({ rule: 'four cases', ...day }).heating).toBe(2.625);
 * expect(dailyExtremeDegreeDays({ rule: 'middle', ...day }).heating).toBe(2);
 * ```
 */
export function dailyExtremeDegreeDays({ rule, highest, lowest, base }: DailyExtremeInput): MonthDegreeDays {
  demandChoice('rule', rule, ['middle', 'four cases']);
  demand('lowest', 'temperature', lowest, OUTDOOR);
  demand('highest', 'temperature', highest, { atLeast: lowest, atMost: OUTDOOR.atMost }, 'highest and lowest may be interchanged');
  demand('base', 'temperature', base, OUTDOOR);
  const below = rule === 'middle' ? Math.max(0, base - (highest + lowest) / 2) : fourCases(base - lowest, highest - base);
  const above = rule === 'middle' ? Math.max(0, (highest + lowest) / 2 - base) : fourCases(highest - base, base - lowest);
  return { heating: below as DegreeDays, cooling: above as DegreeDays };
}

/** Degree days towards one side, from how far the day reaches to that side of the base and to the other. */
function fourCases(near: number, far: number): number {
  if (near <= 0) return 0;
  if (far <= 0) return (near - far) / 2;
  return near >= far ? near / 2 - far / 4 : near / 4;
}
