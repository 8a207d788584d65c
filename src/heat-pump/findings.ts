import { demand, demandObject } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { FlowPerPower, Ratio, Temperature } from '../units/index.js';
import type { PerformanceMap } from './performance-map.js';
import type { UnitState } from './unit-state.js';

/** COPs that units have over the range of a loop, own judgement from catalogues and field tests [1]. */
const USUAL_COP = { heating: { lowest: 2, highest: 7 }, cooling: { lowest: 2, highest: 10 } } as const;

/** Flow per heating capacity at design: 2 to 5 gpm per ton, 3 on nominal capacity being the rule of the trade [m3/(s.W)]. */
const USUAL_FLOW = { lowest: 3.6e-8, highest: 9e-8 } as const;

/** What to look at in the rating points of a map. */
export function mapFindings(mode: 'heating' | 'cooling', points: readonly UnitState[]): readonly Finding[] {
  return [
    ...(points.length === 2 ? [fewPoints(mode, points)] : []),
    ...turning(mode, points, 'capacity', ({ capacity }) => capacity),
    ...turning(mode, points, 'COP', ({ cop }) => cop),
    ...points.flatMap((point) => unusualCop(mode, point)),
  ];
}

const fewPoints = (mode: 'heating' | 'cooling', points: readonly UnitState[]): Finding => ({
  code: 'few-rating-points',
  level: 'note',
  values: { mode, points: points.length },
  source: 'common practice',
});

/** A warmer loop gives more heat at a better COP, and takes less in cooling at a worse one; the first point where that turns. */
function turning(
  mode: 'heating' | 'cooling',
  points: readonly UnitState[],
  quantity: 'capacity' | 'COP',
  of: (state: UnitState) => number,
): readonly Finding[] {
  const sign = mode === 'heating' ? 1 : -1;
  const found = points.find((point, index) => index > 0 && sign * (of(point) - of(points[index - 1] ?? point)) < 0);
  if (found === undefined) return [];
  return [{ code: 'rating-points-odd', level: 'warning', values: { mode, quantity, enteringFluid: found.enteringFluid }, source: 'common practice' }];
}

function unusualCop(mode: 'heating' | 'cooling', { enteringFluid, cop }: UnitState): readonly Finding[] {
  const { lowest, highest } = USUAL_COP[mode];
  if (cop >= lowest && cop <= highest) return [];
  const values = { mode, enteringFluid, cop, lowest: lowest as Ratio, highest: highest as Ratio };
  return [{ code: 'cop-unusual', level: 'warning', values, source: 'common practice' }];
}

/**
 * Whether a state of the unit rests on the line led on beyond its rating points.
 *
 * @param map - the unit
 * @param enteringFluid - where it was evaluated [degC]
 * @returns `map-extrapolated`, or nothing within the rating points
 * @throws InputError when there is no such map or the fluid is no number
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts, ratio } = await import('../units/index.js');
 * const { performanceMap } = await import('./performance-map.js');
 * const points = [
 *   { enteringFluid: celsius(0), capacity: kilowatts(8), cop: ratio(3.4) },
 *   { enteringFluid: celsius(10), capacity: kilowatts(10.3), cop: ratio(4.1) },
 * ];
 * const map = performanceMap({ mode: 'heating', points });
 * expect(extrapolationFindings(map, celsius(-1))[0]?.code).toBe('map-extrapolated');
 * expect(extrapolationFindings(map, celsius(0))).toEqual([]);
 * ```
 */
export function extrapolationFindings(map: Pick<PerformanceMap, 'mode' | 'rated'>, enteringFluid: Temperature): readonly Finding[] {
  demandObject('map', map);
  demandObject('map.rated', map.rated);
  demand('enteringFluid', 'temperature', enteringFluid);
  const {
    mode,
    rated: { lowest, highest },
  } = map;
  if (enteringFluid >= lowest && enteringFluid <= highest) return [];
  return [{ code: 'map-extrapolated', level: 'warning', values: { mode, enteringFluid, lowest, highest }, source: 'common practice' }];
}

/** Whether the flow through the unit is one that units are made for. */
export function flowFindings(flowPerPower: number): readonly Finding[] {
  const { lowest, highest } = USUAL_FLOW;
  if (flowPerPower >= lowest && flowPerPower <= highest) return [];
  const values = { flowPerPower: flowPerPower as FlowPerPower, lowest: lowest as FlowPerPower, highest: highest as FlowPerPower };
  return [{ code: 'source-flow-unusual', level: 'warning', values, source: 'common practice' }];
}
