import { demand } from '../errors/index.js';
import type { TaggedQuantity, Temperature } from '../units/index.js';
import { LazyTable } from './lazy-table.js';
import type { SimulationInput } from './simulation.js';
import { UnitTable } from './unit-table.js';

/** What stands between load and wall, tabulated. */
export interface Plant {
  readonly heating: UnitTable | undefined;
  readonly cooling: UnitTable | undefined;
  /** Film and wall over the mean fluid [m.K/W]. */
  readonly resistance: LazyTable;
  /** Electric input of the pump over the mean fluid [W]; absent where there is none. */
  readonly circulation: LazyTable | undefined;
  /** Share of it that ends in the fluid [1]. */
  readonly circulatorHeat: number;
  /** How far the mean fluid is from the entering one, per heat taken from the ground [K/W]. */
  readonly halfRange: number;
}

/** Tabulates unit, film and pump; the tables serve every length and every year. */
export function plantOf({ duty, resistanceAt, pump, heatCapacityRate }: Omit<SimulationInput, 'pipeLength'>): Plant {
  const { heating, cooling } = duty.from === 'building' ? duty : {};
  return {
    heating: heating && new UnitTable(heating),
    cooling: cooling && new UnitTable(cooling),
    resistance: new LazyTable((meanFluid) => demanded('resistanceAt', 'pipe resistance', resistanceAt(meanFluid as Temperature), 100)),
    circulation: pump && new LazyTable((meanFluid) => demanded('pump.powerAt', 'electric power', pump.powerAt(meanFluid as Temperature), 1e6)),
    circulatorHeat: pump?.heatShare ?? 1,
    halfRange: 1 / (2 * heatCapacityRate),
  };
}

/** What a function of the caller returned, where it can be. */
function demanded(argument: string, kind: TaggedQuantity['kind'], value: number, atMost: number): number {
  demand(argument, kind, value, { atLeast: 0, atMost });
  return value;
}
