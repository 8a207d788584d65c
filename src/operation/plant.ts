import { demand } from '../errors/index.js';
import type { PerformanceMap, StagedUnit, UnitModel } from '../heat-pump/index.js';
import type { TaggedQuantity, Temperature } from '../units/index.js';
import { LazyTable } from './lazy-table.js';
import { LevelMix } from './level-mix.js';
import type { SimulationInput } from './simulation.js';
import { PriorityMix } from './priority-mix.js';
import { UnitTable } from './unit-table.js';

/** What stands between load and wall, tabulated. */
export interface Plant {
  /** Whether there is a unit in heating. */
  readonly heats: boolean;
  readonly cools: boolean;
  /** The unit in heating, where it is one map over the entering fluid alone, which is followed at less cost. */
  readonly heating: UnitTable | undefined;
  readonly cooling: UnitTable | undefined;
  /** The unit in heating, where it has levels or depends on the temperature supplied. */
  readonly heatingMix: LevelMix | undefined;
  readonly coolingMix: LevelMix | undefined;
  /** All of these, where the unit makes hot water as well. */
  readonly priority: PriorityMix | undefined;
  /** Film and wall over the mean fluid [m.K/W]. */
  readonly resistance: LazyTable;
  /** Electric input of the pump over the mean fluid [W]; absent where there is none. */
  readonly circulation: LazyTable | undefined;
  /** Share of it that ends in the fluid [1]. */
  readonly circulatorHeat: number;
  /** How far the mean fluid is from the entering one, per heat taken from the ground [K/W]. */
  readonly halfRange: number;
}

type Unit = PerformanceMap | StagedUnit | UnitModel;
type UnitsOfDuty = Partial<Pick<Extract<SimulationInput['duty'], { from: 'building' }>, 'heating' | 'cooling' | 'supplyTemperatures' | 'hotWater'>>;

/** Tabulates unit, film and pump; the tables serve every length and every year. */
export function plantOf({
  duty,
  resistanceAt,
  pump,
  heatCapacityRate,
}: Pick<SimulationInput, 'duty' | 'resistanceAt' | 'pump' | 'heatCapacityRate'>): Plant {
  const { heating, cooling, supplyTemperatures, hotWater }: UnitsOfDuty = duty.from === 'building' ? duty : {};
  const plain = (unit: Unit | undefined): UnitTable | undefined =>
    unit === undefined || 'levels' in unit || supplyTemperatures !== undefined || hotWater !== undefined ? undefined : new UnitTable(unit);
  const mixed = (unit: Unit | undefined): LevelMix | undefined => {
    if (unit === undefined) return undefined;
    if ('levels' in unit) return new LevelMix(unit, supplyTemperatures);
    if (supplyTemperatures === undefined && hotWater === undefined) return undefined;
    return new LevelMix({ mode: unit.mode, levels: [{ model: unit, reachedBy: 'starting' }] }, supplyTemperatures);
  };
  const heatingMix = mixed(heating);
  const coolingMix = mixed(cooling);
  return {
    heats: heating !== undefined,
    cools: cooling !== undefined,
    heating: plain(heating),
    cooling: plain(cooling),
    heatingMix,
    coolingMix,
    priority: hotWater && new PriorityMix(new UnitTable(hotWater.heating, hotWater.supplyTemperature), heatingMix, coolingMix),
    resistance: new LazyTable((meanFluid) => demanded('resistanceAt', 'pipe resistance', resistanceAt(meanFluid as Temperature), 100)),
    circulation: pump && new LazyTable((meanFluid) => demanded('pump.powerAt', 'electric power', pump.powerAt(meanFluid as Temperature), 1e6)),
    circulatorHeat: pump?.heatShare ?? 1,
    halfRange: 1 / (2 * heatCapacityRate),
  };
}

/** What a function of the caller returned, where it can be. */
export function demanded(argument: string, kind: TaggedQuantity['kind'], value: number, atMost: number): number {
  demand(argument, kind, value, { atLeast: 0, atMost });
  return value;
}
