import { demand, demandObject } from '../errors/index.js';
import type { ScaledPlace } from './scaled-unit.js';
import { EXTRAPOLATED } from './unit-curves.js';

type Place = Required<{ readonly [P in keyof ScaledPlace]: number }>;

/** From where to where the points go in each quantity, and whether that is anywhere at all. */
export type Reach = { readonly [P in keyof Place]: { readonly low: number; readonly high: number; readonly varies: boolean } };

/** Values closer than this are the same setting of the table [K] and [1]. */
const SAME = { enteringFluid: 0.1, loadSide: 0.1, flowRatio: 0.01, loadFlowRatio: 0.01 } as const;

/** How far the points reach in each quantity. */
export function reachOf(points: readonly Place[]): Reach {
  const range = (key: keyof Place): Reach[keyof Place] => {
    const values = points.map((point) => point[key]);
    const [low, high] = [Math.min(...values), Math.max(...values)];
    return { low, high, varies: high - low >= SAME[key] };
  };
  return { enteringFluid: range('enteringFluid'), loadSide: range('loadSide'), flowRatio: range('flowRatio'), loadFlowRatio: range('loadFlowRatio') };
}

/** Refuses a place that the points do not reach; flows left out are the rated ones. */
export function demandPlace(reach: Reach, place: ScaledPlace): Place {
  demandObject('enteringFluid', place);
  const { enteringFluid, loadSide, flowRatio = 1, loadFlowRatio = 1 } = place;
  const within = (key: keyof Place, beyond: number): { readonly atLeast: number; readonly atMost: number } => {
    const { low, high, varies } = reach[key];
    // What did not vary has no slope, and may be asked at its value alone.
    return { atLeast: low - (varies ? beyond : SAME[key]), atMost: high + (varies ? beyond : SAME[key]) };
  };
  const hint = 'the points do not reach there; a fit led on is worth nothing';
  demand('enteringFluid', 'temperature', enteringFluid, within('enteringFluid', EXTRAPOLATED), hint);
  demand('loadSide', 'temperature', loadSide, within('loadSide', EXTRAPOLATED), hint);
  demand('flowRatio', 'ratio', flowRatio, within('flowRatio', 1e-9), hint);
  demand('loadFlowRatio', 'ratio', loadFlowRatio, within('loadFlowRatio', 1e-9), hint);
  return { enteringFluid, loadSide, flowRatio, loadFlowRatio };
}
