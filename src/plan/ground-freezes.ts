import type { ClimateInput } from '../climate/index.js';
import type { Finding } from '../findings/index.js';
import type { GroundAtPipes } from './ground-at-pipes.js';

/**
 * Whether the ground around the pipes freezes without the loop.
 *
 * @param ground - undisturbed ground at the pipes, in the year that is designed for
 * @param climate - what is known of the surface; a wave of the ground itself has its snow in it
 * @returns a warning where it does
 */
export function groundFreezes({ lowest, meanDepth }: GroundAtPipes, climate: ClimateInput): readonly Finding[] {
  if (lowest >= 0) return [];
  const snow = climate.from === 'wave' || climate.cover === 'lasting snow' ? 'counted' : 'left out';
  return [{ code: 'ground-freezes-at-pipes', level: 'warning', values: { lowest, meanDepth, snow }, source: 'common practice' }];
}
