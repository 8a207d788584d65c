import { demand, demandObject, InputError } from '../errors/index.js';
import type { Conductance, ElectricPower, Power, Ratio, Temperature } from '../units/index.js';
import type { UnitSurfaces } from './condition-belief.js';
import type { ConditionMap } from './condition-map.js';
import type { LoadSideKind } from './condition-point.js';
import { sliceOf } from './condition-slice.js';
import type { ConditionTable } from './condition-rows.js';
import type { ConditionState, UnitConditions } from './condition-state.js';
import { EXTRAPOLATED } from './unit-curves.js';
import { type Span, spansOf } from './unit-surface.js';

/** Everything of a map but what to look at in it. */
export function answersOf(side: LoadSideKind, surfaces: UnitSurfaces): Omit<ConditionMap, 'findings'> {
  const { mode, table, capacity, power } = surfaces;
  const rows = table.layers[0]?.rows ?? [];
  const [coldest, warmest] = [rows[0]?.loadSide ?? 0, rows.at(-1)?.loadSide ?? 0];
  const [least, greatest] = [table.layers[0]?.flowRatio ?? 1, table.layers.at(-1)?.flowRatio ?? 1];
  const sign = mode === 'heating' ? -1 : 1;
  const stateAt = (enteringFluid: number, loadSide: number, flowRatio: number): ConditionState => {
    const heat = capacity(enteringFluid, loadSide, flowRatio);
    const electricity = power(enteringFluid, loadSide, flowRatio);
    const state = {
      enteringFluid: enteringFluid as Temperature,
      capacity: heat.value as Power,
      power: electricity.value as ElectricPower,
      cop: (heat.value / electricity.value) as Ratio,
      groundHeat: (heat.value + sign * electricity.value) as Power,
      capacitySlope: heat.byEntering as Conductance,
      powerSlope: electricity.byEntering as Conductance,
      groundHeatSlope: (heat.byEntering + sign * electricity.byEntering) as Conductance,
      loadSide: loadSide as Temperature,
      flowRatio: flowRatio as Ratio,
      capacityByLoadSide: heat.byLoadSide as Conductance,
      powerByLoadSide: electricity.byLoadSide as Conductance,
      groundHeatByLoadSide: (heat.byLoadSide + sign * electricity.byLoadSide) as Conductance,
    };
    if (side !== 'not stated') return state;
    const { loadSide: _, ...unstated } = state;
    return unstated;
  };
  const loadSideOf = (loadSide: Temperature | undefined): number => {
    if (loadSide === undefined && rows.length === 1) return coldest;
    if (side === 'not stated') throw new InputError({ code: 'impossible', argument: 'loadSide', value: String(loadSide), allowed: NONE_STATED });
    const beyond = rows.length === 1 ? 0 : EXTRAPOLATED;
    demand('loadSide', 'temperature', loadSide ?? absent(), { atLeast: coldest - beyond, atMost: warmest + beyond }, BEYOND);
    return loadSide ?? coldest;
  };
  const flowOf = (flowRatio: Ratio = 1 as Ratio): number => {
    demand('flowRatio', 'ratio', flowRatio, { atLeast: least, atMost: greatest }, BEYOND);
    return flowRatio;
  };
  const at = (conditions: UnitConditions): ConditionState => {
    demandObject('conditions', conditions);
    const { enteringFluid, loadSide, flowRatio } = conditions;
    const place = loadSideOf(loadSide);
    const { lowest, highest } = spansOf(table, place).usable;
    demand('enteringFluid', 'temperature', enteringFluid, { atLeast: lowest, atMost: highest }, BEYOND);
    return stateAt(enteringFluid, place, flowOf(flowRatio));
  };
  const nominal = Math.min(Math.max(1, least), greatest);
  return {
    mode,
    side,
    points: table.layers.flatMap((layer) =>
      layer.rows.flatMap(({ ratings, loadSide }) => ratings.map(({ enteringFluid }) => stateAt(enteringFluid, loadSide, layer.flowRatio))),
    ),
    ...(side === 'not stated' ? {} : { loadSides: { lowest: coldest as Temperature, highest: warmest as Temperature } }),
    flowRatios: { leastFlowRatio: least as Ratio, greatestFlowRatio: greatest as Ratio },
    ratedAt: (loadSide) => range(spansOf(table, loadSideOf(loadSide)).rated),
    usableAt: (loadSide) => range(spansOf(table, loadSideOf(loadSide)).usable),
    at,
    slice: (conditions) => {
      demandObject('conditions', conditions);
      const [place, flow] = [loadSideOf(conditions.loadSide), flowOf(conditions.flowRatio)];
      return sliceOf(mode, table, place, (enteringFluid) => stateAt(enteringFluid, place, flow));
    },
    continuedAt: (enteringFluid, loadSide) => {
      demand('enteringFluid', 'temperature', enteringFluid, { atLeast: -1000, atMost: 1000 });
      demand('loadSide', 'temperature', loadSide, { atLeast: -1000, atMost: 1000 });
      return stateAt(enteringFluid, loadSide, nominal);
    },
  };
}

const BEYOND = 'the rating points do not reach there; ask the maker for more of them';
const NONE_STATED = 'nothing, as the rating points state no load-side temperature';

const range = ({ lowest, highest }: Span): { lowest: Temperature; highest: Temperature } => ({
  lowest: lowest as Temperature,
  highest: highest as Temperature,
});

function absent(): never {
  throw new InputError({
    code: 'missing',
    argument: 'loadSide',
    value: undefined,
    allowed: 'a load-side temperature, as the rating points state several',
  });
}

/** Refuses layers of several flows that have no entering fluid in common. */
export function demandShared(list: string, table: ConditionTable): void {
  for (const { loadSide, ratings } of table.layers[0]?.rows ?? []) {
    const { lowest, highest } = spansOf(table, loadSide).rated;
    if (highest > lowest) continue;
    throw new InputError({
      code: 'impossible',
      argument: `${list}.${String(ratings[0]?.index ?? 0)}.flowRatio`,
      value: { kind: 'ratio', value: ratings[0]?.flowRatio ?? 1 },
      allowed: 'flows that have a range of entering fluids in common',
    });
  }
}
