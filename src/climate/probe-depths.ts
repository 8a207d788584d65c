import { demand, demandCount } from '../errors/index.js';
import type { Length, TemperatureDifference } from '../units/index.js';
import type { GroundMoment, ProbeDepth } from './ground-probe.js';
import { demandDay, demandPart } from './limits.js';

/** Refuses a depth that no probe reaches. */
export function demandProbeDepth(argument: string, depth: Length): void {
  demand(argument, 'length', depth, { atLeast: 0, atMost: 100 }, 'metres, counted downwards from the surface');
}

/** Refuses places and moments that no probe is read at. */
export function demandMoments(argument: string, moments: readonly GroundMoment[]): void {
  demandCount(argument, moments, 1);
  for (const [i, moment] of moments.entries()) {
    const place = `${argument}.${String(i)}`;
    demandPart(place, moment);
    demandProbeDepth(`${place}.depth`, moment.depth);
    demandDay(`${place}.day`, moment.day);
  }
}

/** Residuals by depth, from the shallowest down. */
export function depthsOf(readings: readonly GroundMoment[], residuals: Float64Array): readonly ProbeDepth[] {
  const depths = [...new Set(readings.map(({ depth }) => depth))].sort((a, b) => a - b);
  return depths.map((depth): ProbeDepth => {
    const left = residuals.filter((_, i) => readings[i]?.depth === depth);
    const mean = left.reduce((sum, value) => sum + value, 0) / left.length;
    const square = left.reduce((sum, value) => sum + value ** 2, 0) / left.length;
    return { depth, count: left.length, meanResidual: mean as TemperatureDifference, rootMeanSquare: Math.sqrt(square) as TemperatureDifference };
  });
}
