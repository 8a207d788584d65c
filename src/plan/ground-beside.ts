import type { Finding } from '../findings/index.js';
import type { Layout } from '../ground/index.js';
import type { Source } from '../references/index.js';
import type { Diameter } from '../units/index.js';
import type { HoursFixed } from './by-hours.js';
import { demandFollowIce, demandPlanFill } from './fill-input.js';
import { filledTrench } from './filled-trench.js';
import type { GroundState } from './ground-state.js';
import type { SurfaceWaves } from './ground-at-pipes.js';
import { iceGround } from './ice-ground.js';
import type { LoopInput } from './loop-input.js';
import type { LoopPlan } from './loop-plan.js';
import { planIce } from './plan-ice.js';
import { planSettling } from './plan-settling.js';
import { sampledLayer } from './soil-at-pipes.js';
import type { SoilView } from './soil-view.js';
import type { SolvedByHours } from './solve-by-hours.js';

/** What the plan reports beside the loop in native ground without ice. */
export interface BesideNative extends Pick<LoopPlan, 'settling' | 'iceAround'> {
  readonly findings: readonly Finding[];
  readonly sources: readonly Source[];
}

/** What the ground is followed from. */
export interface GroundFacts extends GroundState {
  readonly view: SoilView;
  readonly surface: SurfaceWaves;
  readonly layout: Layout;
  readonly outsideDiameter: Diameter;
}

/**
 * Fill and ice, where they were asked for: refused before the loop is searched for, followed once it is found.
 *
 * @param input - the fill of the trenches, what is asked of the ice
 * @param facts - the ground
 * @returns what follows the loop chosen; nothing where nothing was asked for
 * @throws InputError with the place in the input
 */
export function groundBeside(
  { trenchFill, followIce }: Pick<LoopInput, 'trenchFill' | 'followIce'>,
  { view, surface, layout, outsideDiameter, soil, ground: { meanDepth } }: GroundFacts,
): (solved: SolvedByHours, hours: HoursFixed) => BesideNative {
  if (trenchFill !== undefined) demandPlanFill(trenchFill, layout, outsideDiameter);
  if (followIce !== undefined) demandFollowIce(followIce, layout);
  const sampled = (wanted: string): ReturnType<typeof sampledLayer> => sampledLayer(view.layers, meanDepth, wanted);
  const trench = trenchFill && filledTrench({ fill: trenchFill, layers: view.layers, layout, outsideDiameter, soil: sampled('trenchFill') });
  const layer = followIce && sampled('followIce');
  const iced = layer && { soil: iceGround(soil, layer), textureClass: layer.sample.texture.class };
  return (solved, hours) => {
    const settled = trench && planSettling(solved, hours, trench);
    const ice = iced && planIce(solved, { ...iced, asked: followIce ?? {}, surface, outsideDiameter });
    return {
      ...(settled && { settling: settled.settling }),
      ...(ice && { iceAround: ice.ice }),
      findings: [...(trench?.findings ?? []), ...(settled?.findings ?? []), ...(ice?.findings ?? [])],
      sources: [...(trench?.sources ?? []), ...(ice?.sources ?? [])],
    };
  };
}
