import type { Finding } from '../findings/index.js';
import type { PipeResistanceParts } from './resistance.js';

/**
 * What to know about the film in a pipe at the state it was computed for, as a rule the coldest hour.
 *
 * @param resistance - the resistance of the pipe
 * @returns findings, none for turbulent flow
 * @remarks `laminar-flow` is a note, since the resistance is counted; `transitional-flow` warns that the film may be off by a factor of two.
 * @example
 * ```ts @import.meta.vitest
 * const { joulesPerKilogramKelvin, kilogramsPerCubicMetre, litresPerSecond, millipascalSeconds, wattsPerMetreKelvin } = await import(
 *   '../units/index.js'
 * );
 * const { pipeDimensions } = await import('./dimensions.js');
 * const { pipeResistance } = await import('./resistance.js');
 * const fluid = {
 *   density: kilogramsPerCubicMetre(1024),
 *   viscosity: millipascalSeconds(5.52),
 *   specificHeat: joulesPerKilogramKelvin(3878),
 *   conductivity: wattsPerMetreKelvin(0.447),
 * };
 * const pipe = pipeDimensions({ series: 'IPS', size: '3/4', dimensionRatio: '11' });
 * expect(filmFindings(pipeResistance({ pipe, fluid, flow: litresPerSecond(0.19) }))[0]?.code).toBe('laminar-flow');
 * ```
 */
export function filmFindings({ regime, reynolds, film, wall }: PipeResistanceParts): readonly Finding[] {
  const values = { reynolds, film, wall };
  if (regime === 'laminar') return [{ code: 'laminar-flow', level: 'note', values, source: 'incroperaInternalFlow' }];
  if (regime === 'transitional') return [{ code: 'transitional-flow', level: 'warning', values, source: 'gnielinski2013' }];
  return [];
}
