import { type BuildingSignatures, monthlyLoads, type MonthlyLoads, runFractions, type RunFractions } from '../building/index.js';
import { InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { HeatPump, PerformanceMap } from '../heat-pump/index.js';
import type { FluidState } from '../states/index.js';
import type { Power, RunFraction, Temperature } from '../units/index.js';
import { atPlace } from './at-place.js';
import { coldestFluid, type DesignFluid, type UnitAndFluid, warmestFluid } from './design-fluid.js';
import { type LoopFluid, stateAt } from './fluid-plan.js';
import type { HotWaterOfPlan } from './hot-water.js';
import type { ModeDesign } from './mode-design.js';
import { firstOfSeason } from './months.js';

/** One mode with what led to it. */
export interface Mode {
  readonly design: ModeDesign;
  /** The fluid at its design mean temperature. */
  readonly fluid: FluidState;
  readonly loads: MonthlyLoads;
  readonly run: RunFractions;
  readonly findings: readonly Finding[];
}

/** The modes in which the unit runs. */
export interface ModesFound {
  readonly modes: readonly Mode[];
  readonly findings: readonly Finding[];
}

/** What the modes are made from. */
export interface ModesInput {
  readonly building: BuildingSignatures;
  readonly unit: HeatPump;
  readonly fluid: LoopFluid;
  /** Twelve monthly means of the air [degC]. */
  readonly airMonths: readonly Temperature[];
  /** Hot water; none when left out. */
  readonly hotWater?: HotWaterOfPlan | undefined;
}

/**
 * Heating, and cooling where both house and unit have it: the unit at the limits the loop is designed for and its months.
 *
 * Hot water is counted by its heat from the ground on the mean of each month, over that of the running unit; in the coldest weather its share of the hardest month is added.
 *
 * @param input - house, unit, fluid and climate
 * @returns one or two modes; a mode in which the unit hardly runs is left out and told
 * @throws InputError at the limit or the flow that leaves no fluid; `impossible` when the unit hardly runs in any mode
 */
export function modesOf({ building, unit, fluid, airMonths, hotWater }: ModesInput): ModesFound {
  const through = (map: PerformanceMap): UnitAndFluid => ({
    flow: unit.sourceFlow,
    groundHeatAt: (entering) => map.continuedAt(entering).groundHeat,
    stateAt: (temperature) => stateAt(fluid, temperature),
  });
  const modeOf = (map: PerformanceMap, limits: DesignFluid, signature: BuildingSignatures['heatingForSizing']): Mode => {
    const performance = map.at(limits.entering);
    const { findings: loadFindings, ...loads } = atPlace('climate', () => monthlyLoads({ signature, meanOutdoor: airMonths }));
    const { findings: runFindings, ...run } = runFractions({ loads, capacity: performance.capacity });
    const house = run.months.map(({ runFraction }) => runFraction);
    const beside = map.mode === 'heating' ? hotWaterShares(hotWater, limits.entering, performance.groundHeat) : [];
    const shareOfHouse = signature.loadAtDesign / performance.capacity;
    return {
      design: {
        unit: { mode: map.mode, fluid: limits, performance },
        runFractions: house.map((fraction, index) => Math.min(1, fraction + (beside[index] ?? 0)) as RunFraction),
        startMonth: firstOfSeason(house),
        shareAtDesign: Math.min(1, shareOfHouse + Math.max(0, ...beside)) as RunFraction,
      },
      fluid: stateAt(fluid, limits.mean),
      loads,
      run,
      findings: [...loadFindings, ...runFindings],
    };
  };
  // A fluid that does not exist at the limit itself is the limit's fault; one that leaves what exists on its way through the unit is the flow's.
  atPlace('heatPump.lowestEntering', () => stateAt(fluid, unit.lowestEntering));
  const coldest = atPlace('heatPump.sourceFlow', () => coldestFluid(through(unit.heating), unit.lowestEntering, unit.lowestLeaving));
  const heating = modeOf(unit.heating, coldest, building.heatingForSizing);
  const { cooling } = unit;
  if (cooling === undefined || building.cooling === undefined) return thatRun([heating]);
  atPlace('heatPump.highestEntering', () => stateAt(fluid, cooling.highestEntering));
  const warmest = atPlace('heatPump.sourceFlow', () => warmestFluid(through(cooling.map), cooling.highestEntering));
  return thatRun([heating, modeOf(cooling.map, warmest, building.cooling)]);
}

/** Heat from the ground for hot water on the mean of each month over that of the running unit; what it cannot make in the whole month is the auxiliary's. */
function hotWaterShares(hotWater: HotWaterOfPlan | undefined, entering: Temperature, groundHeat: Power): readonly number[] {
  if (hotWater === undefined) return [];
  const { capacity, groundHeat: whileHot } = hotWater.heating.continuedAt(entering);
  return hotWater.meanLoads.map((load) => (Math.min(1, load / capacity) * whileHot) / groundHeat);
}

/** A mode that runs less than this share of its hardest month needs no loop of its own. */
const HARDLY = 0.005 as RunFraction;

function thatRun(modes: readonly Mode[]): ModesFound {
  const hardest = ({ design }: Mode): RunFraction => Math.max(...design.runFractions) as RunFraction;
  const run = modes.filter((mode) => hardest(mode) >= HARDLY);
  if (run.length === 0) {
    throw new InputError({
      code: 'impossible',
      argument: 'building',
      value: undefined,
      allowed: 'a house that is heated or cooled for more than half a per cent of its hardest month',
      hint: 'check the design loads and the climate; such a house needs no loop',
    });
  }
  const idle = modes.filter((mode) => hardest(mode) < HARDLY);
  const findings = idle.map(
    (mode): Finding => ({
      code: 'mode-hardly-runs',
      level: 'note',
      values: { mode: mode.design.unit.mode, runFraction: hardest(mode), least: HARDLY },
      source: 'common practice',
    }),
  );
  return { modes: run, findings: [...findings, ...run.flatMap((mode) => [...mode.findings, ...oversized(mode)])] };
}

/** Below this share of its capacity at design the unit is larger than the house asks for, by the usual rules of sizing to the load. */
const OVERSIZED = 0.6 as RunFraction;

function oversized({ design }: Mode): readonly Finding[] {
  const { shareAtDesign, unit } = design;
  if (shareAtDesign >= OVERSIZED) return [];
  return [{ code: 'unit-oversized', level: 'note', values: { mode: unit.mode, shareAtDesign, usual: OVERSIZED }, source: 'common practice' }];
}
