import { demandChoice, demandCount } from '../errors/index.js';
import { NOTICES, type Notice, type Situation, SITUATIONS } from './notices.data.js';

/**
 * The notices that a set of situations calls for, in the order of the work. Those for `always` are in every answer.
 *
 * @param situations - what the job involves
 * @returns the notices to show
 * @throws InputError for a situation that is not known, so that no notice is lost to a slip of the pen
 * @example
 * ```ts @import.meta.vitest
 * expect(noticesFor(['digging']).map(({ code }) => code)).toContain('trench-collapse');
 * expect(noticesFor([]).map(({ code }) => code)).toContain('local-rules');
 * ```
 */
export function noticesFor(situations: readonly Situation[]): readonly Notice[] {
  demandCount('situations', situations, 0);
  situations.forEach((situation, index) => {
    demandChoice(`situations.${String(index)}`, situation, SITUATIONS);
  });
  return NOTICES.filter(({ situation }) => situation === 'always' || situations.includes(situation));
}
