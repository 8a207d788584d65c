import { demandObject } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Ratio, Temperature } from '../units/index.js';
import type { UnitSurfaces } from './condition-belief.js';
import type { ConditionMap } from './condition-map.js';
import type { LoadSideKind } from './condition-point.js';
import type { UnitConditions } from './condition-state.js';
import { extrapolationFindings, mapFindings } from './findings.js';
import { demandFunction } from './staged-unit.js';
import { unitState } from './unit-curves.js';
import type { UnitState } from './unit-state.js';
import { spansAt } from './unit-surface.js';

/** What to look at in a table: each row of the flow nearest the rated one, then the rows beside each other. */
export function tableFindings(
  side: LoadSideKind,
  surfaces: UnitSurfaces,
  given: { readonly least: number; readonly greatest: number },
): readonly Finding[] {
  const { mode, table } = surfaces;
  const layer = table.layers.reduce((best, each) => (Math.abs(each.flowRatio - 1) < Math.abs(best.flowRatio - 1) ? each : best));
  const state = stateIn(surfaces, layer.flowRatio);
  const rows = layer.rows.map(({ loadSide, ratings }) => ratings.map(({ enteringFluid }) => state(enteringFluid, loadSide)));
  const mixed = { mode, leastFlowRatio: given.least as Ratio, greatestFlowRatio: given.greatest as Ratio };
  return [
    ...(table.flowsMixed ? [{ code: 'rating-flows-mixed', level: 'note', values: mixed, source: 'common practice' } as const] : []),
    ...rows.flatMap((row) => mapFindings(mode, row)).filter(({ code }, k, all) => code !== FEW || all.findIndex((each) => each.code === FEW) === k),
    ...(side === 'not stated' ? [] : layer.rows.slice(1).flatMap((row, k) => besideEachOther(surfaces, layer, state, layer.rows[k] ?? row, row))),
  ];
}

/** Said once, however many rows it holds for. */
const FEW = 'few-rating-points';

type Layer = UnitSurfaces['table']['layers'][number];
type StateOf = (enteringFluid: number, loadSide: number) => UnitState;

const stateIn =
  ({ mode, capacity, power }: UnitSurfaces, flowRatio: number): StateOf =>
  (enteringFluid, loadSide) => {
    const [heat, electricity] = [capacity(enteringFluid, loadSide, flowRatio), power(enteringFluid, loadSide, flowRatio)];
    return unitState(mode, enteringFluid, { value: heat.value, slope: heat.byEntering }, { value: electricity.value, slope: electricity.byEntering });
  };

/** In how many steps the fluids that two rows share are looked over. */
const STEPS = 24;

function besideEachOther(
  { mode }: UnitSurfaces,
  layer: Layer,
  state: StateOf,
  cold: Layer['rows'][number],
  warm: Layer['rows'][number],
): readonly Finding[] {
  const middle = (cold.loadSide + warm.loadSide) / 2;
  const { lowest, highest } = spansAt(layer, middle).rated;
  const places = Array.from({ length: STEPS + 1 }, (_, k) => lowest + ((highest - lowest) * k) / STEPS);
  const sign = mode === 'heating' ? 1 : -1;
  const odd = places.find((place) => sign * (state(place, warm.loadSide).cop - state(place, cold.loadSide).cop) > 0);
  const rises =
    (loadSide: number) =>
    (place: number): number =>
      sign * state(place, loadSide).capacitySlope;
  const turned = places.find((place) => {
    const least = Math.min(rises(cold.loadSide)(place), rises(warm.loadSide)(place));
    return least > 0 && [1, 2, 3].some((quarter) => rises(cold.loadSide + ((warm.loadSide - cold.loadSide) * quarter) / 4)(place) < 0);
  });
  const at = (place: number): { readonly mode: typeof mode; readonly enteringFluid: Temperature; readonly loadSide: Temperature } => ({
    mode,
    enteringFluid: place as Temperature,
    loadSide: warm.loadSide as Temperature,
  });
  return [
    ...(odd === undefined ? [] : [{ code: 'load-side-odd', level: 'warning', values: at(odd), source: 'common practice' } as const]),
    ...(turned === undefined ? [] : [{ code: 'map-turns-between', level: 'note', values: at(turned), source: 'fritschCarlson1980' } as const]),
  ];
}

/**
 * Whether a state of the unit rests on curves led on beyond its rating points.
 *
 * @param map - the unit
 * @param conditions - where it was evaluated
 * @returns `map-extrapolated` for the entering fluid, `load-side-extrapolated` for the load side, or nothing within the rating points
 * @throws InputError when the map does not answer there
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts, ratio } = await import('../units/index.js');
 * const { conditionMap } = await import('./condition-map.js');
 * const points = [[-5, 35, 4], [5, 35, 5], [0, 45, 3.4], [5, 45, 3.9]].map(([entering = 0, supply = 0, cop = 0]) => (
 *   { enteringFluid: celsius(entering), supplyTemperature: celsius(supply), capacity: kilowatts(8 + 0.2 * entering), cop: ratio(cop) }));
 * const map = conditionMap({ mode: 'heating', points });
 * const found = conditionFindings(map, { enteringFluid: celsius(-1), loadSide: celsius(46) });
 * expect(found.map(({ code }) => code)).toEqual(['load-side-extrapolated', 'map-extrapolated']);
 * ```
 */
export function conditionFindings(map: ConditionMap, conditions: UnitConditions): readonly Finding[] {
  demandObject('map', map);
  demandFunction('map.at', map.at);
  map.at(conditions);
  const { enteringFluid, loadSide } = conditions;
  const { mode, loadSides } = map;
  const beyond = extrapolationFindings({ mode, rated: map.ratedAt(loadSide) }, enteringFluid);
  if (loadSides === undefined || loadSide === undefined || (loadSide >= loadSides.lowest && loadSide <= loadSides.highest)) return beyond;
  return [{ code: 'load-side-extrapolated', level: 'warning', values: { mode, loadSide, ...loadSides }, source: 'common practice' }, ...beyond];
}
