import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Source } from '../references/index.js';
import type { SoilThermal } from '../states/index.js';
import type { PipeResistance, Time } from '../units/index.js';
import { USUAL_DIAMETER } from './buried-pipes.js';
import { effectiveConductivity, type LayeredGround } from './effective-conductivity.js';
import { groundLayers, onInterface } from './ground-at-pipe.js';
import { layeredRiseAfter, uniformRise, uniformRiseAfter } from './mean-rise.js';

/** How the walls of pipes warm in layered ground, with fill and bedding, when each gives off one watt per metre from time zero on. */
export interface LayeredResponse {
  /**
   * Mean wall temperature rise of all pipes per heat per metre of each pipe [m.K/W].
   *
   * @param time - since the heat began, 60 to 1e12 [s]
   */
  readonly riseAfter: (time: Time) => PipeResistance;
  /** The rise that it tends to [m.K/W]. */
  readonly steadyRise: PipeResistance;
  /** What is doubtful about the log. */
  readonly findings: readonly Finding[];
  /** What it rests on. */
  readonly sources: readonly Source[];
}

/**
 * How pipes warm in time in layered ground, as no uniform ground would: near layers and the fill are felt first, far ones late.
 *
 * For one trench. To be superposed like any response of the ground. An {@link effectiveConductivity} is of the long run alone.
 *
 * @param ground - layers with their depths [m] and properties, pipes [m], what the trench is filled with
 * @returns the response
 * @throws InputError as {@link effectiveConductivity}, and for an impossible time
 * @remarks
 * Layers: the field of every pair of pipes layer by layer, each layer with its own storage, brought back from the transform of Laplace by ten
 * real places (`layeredLineSource`). A pipe's own heat leaves a cylinder. Fill and bedding: the resistance that they add in the long run,
 * but never more than if all the ground were like them, nor less where they conduct better than all of it.
 *
 * Checked against finite elements from a day to five years and in the long run: two layers with one or two pipes 0.1 % throughout; rings and a
 * square of bedding 0.1 % from a week on, 2 % after a day; fill 0.6 m wide 3 % from a week on and 7 % after a day, too much and so on the safe
 * side.
 *
 * Invariants: uniform ground answers as uniform ground; grows with time towards the steady rise; cutting a layer in two changes nothing.
 * @example
 * ```ts @import.meta.vitest
 * const { days, diameterMillimetres, megajoulesPerCubicMetreKelvin, metres, squareMillimetresPerSecond, wattsPerMetreKelvin } = await import(
 *   '../units/index.js'
 * );
 * const soil = (k: number, c: number) => ({
 *   conductivity: wattsPerMetreKelvin(k),
 *   heatCapacity: megajoulesPerCubicMetreKelvin(c),
 *   diffusivity: squareMillimetresPerSecond(k / c),
 * });
 * const { riseAfter } = layeredResponse({
 *   layers: [
 *     { top: metres(0), bottom: metres(1.2), thermal: soil(0.9, 1.6) },
 *     { top: metres(1.2), bottom: metres(3), thermal: soil(1.9, 2.6) },
 *   ],
 *   pipes: [{ x: metres(0), depth: metres(1.5) }],
 *   outsideDiameter: diameterMillimetres(33.4),
 * });
 * expect(riseAfter(days(30))).toBeCloseTo(0.4334, 3);
 * ```
 */
export function layeredResponse(ground: LayeredGround): LayeredResponse {
  const { steadyRise, addedResistance, findings, sources } = effectiveConductivity(ground);
  const { layers, pipes, outsideDiameter = USUAL_DIAMETER } = ground;
  const radius = outsideDiameter / 2;
  const logged = groundLayers(layers);
  const axes = pipes.map(({ x, depth }) => ({ x, depth: onInterface(logged, depth, radius) }));
  // Pipes that were moved onto an interface are taken back to their own depth, as in the long run.
  const moved = uniformRise(pipes, radius) / uniformRise(axes, radius);
  const bound = boundOf(ground);
  const riseAfter = (time: Time): PipeResistance => {
    demand('time', 'time', time, { atLeast: 60, atMost: 1e12 });
    const inSeries = moved * layeredRiseAfter(logged, axes, radius, time) + addedResistance;
    if (bound === undefined) return inSeries as PipeResistance;
    const alone = uniformRiseAfter(bound, pipes, radius, time);
    return (addedResistance > 0 ? Math.min(inSeries, alone) : Math.max(inSeries, alone)) as PipeResistance;
  };
  return { riseAfter, steadyRise, findings, sources };
}

/** What the pipes lie in, if it conducts worse, or better, than all else: ground of that kind alone would warm more, or less, at any time. */
function boundOf({ layers, fill, bedding }: LayeredGround): SoilThermal | undefined {
  const near = bedding?.thermal ?? fill?.thermal;
  if (near === undefined) return undefined;
  const others = [...layers.map(({ thermal }) => thermal), ...(fill === undefined ? [] : [fill.thermal])].map(({ conductivity }) => conductivity);
  const extreme = others.every((each) => near.conductivity <= each) || others.every((each) => near.conductivity >= each);
  return extreme ? near : undefined;
}
