import { demand, demandCount } from '../errors/index.js';
import type { Diffusivity, Time } from '../units/index.js';
import { demandPart } from './limits.js';
import { demandProbeDepth } from './probe-depths.js';
import type { GroundMoment } from './ground-probe.js';

/** Least distance of two depths of a pair [m]. */
const LEAST_APART = 1e-3;

/** Refuses depths that are fewer than two, out of order or in one place. */
export function demandDepths(argument: string, points: readonly Pick<GroundMoment, 'depth'>[]): void {
  demandCount(argument, points, 2);
  for (const [i, point] of points.entries()) {
    demandPart(`${argument}.${String(i)}`, point);
    demandProbeDepth(`${argument}.${String(i)}.depth`, point.depth);
    const above = points[i - 1];
    if (above === undefined) continue;
    demand(
      `${argument}.${String(i)}.depth`,
      'length',
      point.depth,
      { atLeast: above.depth + LEAST_APART },
      'depths in order from the shallowest down',
    );
  }
}

/** A straight line through points by least squares: its slope, and the slope's error from that of each value. */
export function line(points: readonly { readonly depth: number; readonly value: number; readonly error: number }[]): {
  readonly slope: number;
  readonly slopeError: number;
} {
  const middle = points.reduce((sum, { depth }) => sum + depth, 0) / points.length;
  const spread = points.reduce((sum, { depth }) => sum + (depth - middle) ** 2, 0);
  const slope = points.reduce((sum, { depth, value }) => sum + (depth - middle) * value, 0) / spread;
  const variance = points.reduce((sum, { depth, error }) => sum + (((depth - middle) / spread) * error) ** 2, 0);
  return { slope, slopeError: Math.sqrt(variance) };
}

/** The diffusivity of a damping depth; α = π D² / P. */
export const diffusivityOf = (dampingDepth: number, period: Time): Diffusivity => ((Math.PI * dampingDepth ** 2) / period) as Diffusivity;
