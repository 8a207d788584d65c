import { demandChoice } from '../errors/index.js';
import { UNIFIED_GROUPS, type UnifiedGroup } from '../soil/index.js';
import { GROUP_WORDS } from './text/group-words.js';

/**
 * A group of the Unified Soil Classification System in words.
 *
 * @param group - a group of `unifiedSoilGroup`
 * @returns its name, without a full stop
 * @throws InputError for another group
 * @example
 * ```ts @import.meta.vitest
 * expect(describeSoilGroup('SW-SC')).toBe('well-graded sand with clay');
 * ```
 */
export function describeSoilGroup(group: UnifiedGroup): string {
  demandChoice('group', group, UNIFIED_GROUPS);
  return GROUP_WORDS[group];
}
