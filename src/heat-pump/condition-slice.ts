import { demand } from '../errors/index.js';
import type { Temperature } from '../units/index.js';
import type { ConditionTable } from './condition-rows.js';
import { mapFindings } from './findings.js';
import type { PerformanceMap } from './performance-map.js';
import { unitState } from './unit-curves.js';
import type { UnitState } from './unit-state.js';
import { spansOf } from './unit-surface.js';

/** The unit over the entering fluid alone, from its states at one load side and flow; beyond the table they level off by themselves. */
export function sliceOf(
  mode: 'heating' | 'cooling',
  table: ConditionTable,
  loadSide: number,
  stateAt: (enteringFluid: number) => UnitState,
): PerformanceMap {
  const { rated, usable } = spansOf(table, loadSide);
  const plain = (enteringFluid: number): UnitState => {
    const { capacity, power, capacitySlope, powerSlope } = stateAt(enteringFluid);
    return unitState(mode, enteringFluid, { value: capacity, slope: capacitySlope }, { value: power, slope: powerSlope });
  };
  const at = (enteringFluid: Temperature): UnitState => {
    demand('enteringFluid', 'temperature', enteringFluid, { atLeast: usable.lowest, atMost: usable.highest }, BEYOND);
    return plain(enteringFluid);
  };
  const knots = table.layers.flatMap(({ rows }) => rows.flatMap(({ ratings }) => ratings.map(({ enteringFluid }) => enteringFluid)));
  const within = [...new Set(knots)].filter((place) => place >= rated.lowest && place <= rated.highest).sort((a, b) => a - b);
  const points = within.map(plain);
  return {
    mode,
    points,
    rated: { lowest: rated.lowest as Temperature, highest: rated.highest as Temperature },
    usable: { lowest: usable.lowest as Temperature, highest: usable.highest as Temperature },
    capacityAt: (enteringFluid) => at(enteringFluid).capacity,
    powerAt: (enteringFluid) => at(enteringFluid).power,
    copAt: (enteringFluid) => at(enteringFluid).cop,
    groundHeatAt: (enteringFluid) => at(enteringFluid).groundHeat,
    at,
    continuedAt: (enteringFluid) => {
      demand('enteringFluid', 'temperature', enteringFluid, { atLeast: -1000, atMost: 1000 });
      return plain(enteringFluid);
    },
    findings: mapFindings(mode, points),
  };
}

const BEYOND = 'the rating points do not reach there; ask the maker for more of them';
