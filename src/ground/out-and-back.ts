import { demand, InputError } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { PipeResistance, Shape, Time } from '../units/index.js';
import { type GroundPipes, groundPipes } from './ground-pipes.js';
import { groupPairs, meanRise } from './pairs.js';
import { type GroundResponseInput, groundResponseInputShape } from './response.js';
import { steadyKernel, stepKernel } from './step-kernel.js';

/** A way out and a way back in one trench. */
export interface OutAndBackInput extends GroundResponseInput {
  /** Time since the heat began, above 0 to 1e12; the steady state when left out, which a sealed surface does not have [s]. */
  readonly time?: Time;
}

/** Shape of {@link OutAndBackInput}. */
export const outAndBackInputShape: Shape<OutAndBackInput> = /* @__PURE__ */ joinedShape(groundResponseInputShape, { time: { optional: 'time' } });

/** What the ground does to a way out and a way back, in the terms that a circuit is computed with. */
export interface OutAndBack {
  /** Mean wall temperature rise of both ways per heat per metre of each, what they do to one another included [m.K/W]. */
  readonly groundResistance: PipeResistance;
  /** The part of it that comes from the other way, of all trenches; the same either way round [m.K/W]. */
  readonly mutualResistance: PipeResistance;
}

/**
 * What a circuit's two ways in one trench do to themselves and to one another: the short circuit through the ground between warm and cold pipe.
 *
 * The first pipe of each trench is the way out, the second the way back, in all trenches alike. The fluid along them is for the circuit to follow; at
 * unlike depths it is given the mean of the two.
 *
 * @param input - two pipes in each trench, soil, surface and the time
 * @returns both resistances [m.K/W], of which the first is the rise of {@link groundResponse}
 * @throws InputError as {@link groundResponse} does, for other than two pipes in a trench, and without a time below a sealed surface
 * @remarks Line sources with mirror images. Invariants tested: the first that of {@link groundResponse}; the mutual one by exponential integrals alone in one
 * trench, and the same with the ways exchanged; half the difference of the two ways in which {@link exponentialPair} answers.
 * @example
 * ```ts @import.meta.vitest
 * const { metres, diameterMillimetres, wattsPerMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond, days } = await import('../units/index.js');
 * const { twoPipeSideBySide } = await import('./layout-makers.js');
 * const { groundResistance, mutualResistance } = outAndBack({
 *   layout: twoPipeSideBySide({ depth: metres(1.5), spacing: metres(0.6), trenches: 1, trenchSpacing: metres(3) }),
 *   pipe: { outsideDiameter: diameterMillimetres(32) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) },
 *   time: days(90),
 * });
 * expect(mutualResistance / groundResistance).toBeCloseTo(0.22, 3);
 * ```
 */
export function outAndBack({ time, ...input }: OutAndBackInput): OutAndBack {
  const pipes = groundPipes(input);
  const [out, back, ...more] = pipes.places.pipes;
  if (out === undefined || back === undefined || more.length > 0)
    throw new InputError({ code: 'impossible', argument: 'layout.pipes', value: undefined, allowed: 'two pipes in a trench, out and back' });
  const kernel = kernelAt(time, pipes, input.soil.diffusivity);
  const scale = 1 / (4 * Math.PI * input.soil.conductivity);
  const alone = (pipe: typeof out): number => meanRise(groupPairs({ ...pipes.places, pipes: [pipe] }), kernel);
  const both = meanRise(pipes.groups, kernel);
  return {
    groundResistance: (scale * both) as PipeResistance,
    mutualResistance: (scale * (both - (alone(out) + alone(back)) / 2)) as PipeResistance,
  };
}

function kernelAt(time: Time | undefined, pipes: GroundPipes, diffusivity: number): ReturnType<typeof stepKernel> {
  if (time !== undefined) {
    demand('time', 'time', time, { above: 0, atMost: 1e12 });
    return stepKernel(diffusivity * time, pipes);
  }
  if (!pipes.sealed) return steadyKernel(pipes.radius);
  throw new InputError({
    code: 'missing',
    argument: 'time',
    value: undefined,
    allowed: 'a time',
    hint: 'below a sealed surface the ground warms for ever',
  });
}
