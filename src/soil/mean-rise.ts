import { cylinderWall, exponentialIntegral, stepFromTransfer } from '../numerics/index.js';
import { groundAtPipe, type GroundLayer } from './ground-at-pipe.js';
import { type Conductor, layeredExcess } from './layered-rise.js';
import type { Place } from './panel.js';

/** Mean warming of the walls of pipes by all of them in uniform ground of conductivity one, the surface held at its temperature [1]. */
export function uniformRise(pipes: readonly Place[], radius: number): number {
  return overPairs(pipes, radius, ({ shape }) => shape);
}

/** The same in layered ground, one watt per metre in each pipe [m.K/W]. */
export function layeredRise(ground: readonly GroundLayer[], pipes: readonly Place[], radius: number): number {
  return overPairs(pipes, radius, ({ one, other, shape }) => {
    const between = groundBetween(ground, one, other);
    return shape / between.conductivity + layeredExcess(ground, between, { depths: [one.depth, other.depth], aside: Math.abs(one.x - other.x) });
  });
}

/** Mean of what two pipes lie in. */
function groundBetween(ground: readonly GroundLayer[], one: Place, other: Place): Conductor {
  const [first, second] = [groundAtPipe(ground, one.depth), groundAtPipe(ground, other.depth)];
  return {
    conductivity: (first.conductivity + second.conductivity) / 2,
    heatCapacity: (first.heatCapacity + second.heatCapacity) / 2,
  };
}

/** The same some time after the heat began, by the transform of Laplace of what the layers do beyond uniform ground [m.K/W]. */
export function layeredRiseAfter(ground: readonly GroundLayer[], pipes: readonly Place[], radius: number, time: number): number {
  return overPairs(pipes, radius, (pair) => {
    const { one, other } = pair;
    const between = groundBetween(ground, one, other);
    const beyond = { depths: [one.depth, other.depth], aside: Math.abs(one.x - other.x) } as const;
    return warmingAfter(between, pair, time) + stepFromTransfer((rate) => layeredExcess(ground, between, beyond, rate), time);
  });
}

/** The same in uniform ground [m.K/W]. */
export function uniformRiseAfter(ground: Conductor, pipes: readonly Place[], radius: number, time: number): number {
  return overPairs(pipes, radius, (pair) => warmingAfter(ground, pair, time));
}

/** What one pipe warms another, or its own wall, by in uniform ground; its own heat leaves a cylinder. */
function warmingAfter({ conductivity, heatCapacity }: Conductor, { one, other, near, far }: Pair, time: number): number {
  const spread = (conductivity * time) / heatCapacity;
  const line = (distance: number): number => exponentialIntegral(distance ** 2 / (4 * spread)) / (4 * Math.PI);
  return ((one === other ? cylinderWall(spread / near ** 2) : line(near)) - line(far)) / conductivity;
}

/** Two pipes, or one and itself, and what one warms the other by in ground of conductivity one. */
interface Pair {
  readonly one: Place;
  readonly other: Place;
  /** Distance of one from the wall of the other, or of its own, and from its mirror image. */
  readonly near: number;
  readonly far: number;
  readonly shape: number;
}

/** Mean over the pipes of what all of them do to each. */
function overPairs(pipes: readonly Place[], radius: number, warming: (pair: Pair) => number): number {
  const sum = pipes.reduce(
    (over, one, index) =>
      over +
      pipes.slice(index).reduce((along, other) => {
        const aside = one.x - other.x;
        const near = one === other ? radius : Math.hypot(aside, one.depth - other.depth);
        const far = Math.hypot(aside, one.depth + other.depth);
        return along + (one === other ? 1 : 2) * warming({ one, other, near, far, shape: Math.log(far / near) / (2 * Math.PI) });
      }, 0),
    0,
  );
  return sum / pipes.length;
}
