import { demand, demandCount } from '../errors/index.js';
import type { DegreeDays, Shape } from '../units/index.js';

/** The freezing index that a frost depth is designed with. */
export interface DesignFreezingIndex {
  /** The index [K.d]. */
  readonly freezingIndex: DegreeDays;
  /** Which winters it rests on. */
  readonly rule: 'mean of the three coldest of thirty' | 'coldest of ten';
}

/** Shape of {@link DesignFreezingIndex}. */
export const designFreezingIndexShape: Shape<DesignFreezingIndex> = {
  freezingIndex: 'degree days',
  rule: ['mean of the three coldest of thirty', 'coldest of ten'],
};

/**
 * The freezing index of a design winter from those of winters on record.
 *
 * @param winters - seasonal index of 10 to 1000 winters, oldest first [K.d]
 * @returns mean of the three coldest of the last thirty winters, or with fewer than thirty the coldest of the last ten [K.d]
 * @throws InputError with fewer than ten winters or an impossible index
 * @remarks Source: `freezingIndexTerms`. Invariants: colder winters never make it smaller; winters before the last thirty do not count.
 * @example
 * ```ts @import.meta.vitest
 * const { kelvinDays } = await import('../units/index.js');
 * const winters = [410, 300, 520, 280, 610, 450, 390, 330, 480, 370].map((index) => kelvinDays(index));
 * expect(designFreezingIndex(winters)).toEqual({ freezingIndex: 610, rule: 'coldest of ten' });
 * ```
 */
export function designFreezingIndex(winters: readonly DegreeDays[]): DesignFreezingIndex {
  demandCount('winters', winters, 10, 1000);
  winters.forEach((winter, place) => {
    demand(`winters.${String(place)}`, 'degree days', winter, { atLeast: 0, atMost: 20_000 });
  });
  if (winters.length < 30) return { freezingIndex: Math.max(...winters.slice(-10)) as DegreeDays, rule: 'coldest of ten' };
  const [first = 0, second = 0, third = 0] = winters.slice(-30).sort((a, b) => b - a);
  return { freezingIndex: ((first + second + third) / 3) as DegreeDays, rule: 'mean of the three coldest of thirty' };
}
