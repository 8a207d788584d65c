import type { Energy, Fraction, Power, Shape, Temperature, TemperatureDifference } from '../units/index.js';

type Mode = 'heating' | 'cooling';

/** Values of the findings that the building room raises, by code. */
export interface BuildingFindingValues {
  /** No indoor temperature was given. */
  'indoor-assumed': { readonly mode: Mode; readonly indoor: Temperature };
  /** No balance point was given. */
  'balance-point-assumed': { readonly mode: Mode; readonly balancePoint: Temperature };
  /** The load begins at an outdoor temperature that houses seldom have. */
  'balance-point-unusual': { readonly mode: Mode; readonly balancePoint: Temperature; readonly lowest: Temperature; readonly highest: Temperature };
  /** Heating begins above the outdoor temperature at which cooling does. */
  'balance-points-overlap': { readonly heating: Temperature; readonly cooling: Temperature };
  /** The design outdoor temperature does not fit the monthly means it should be the extreme of. */
  'design-outdoor-doubtful': {
    readonly mode: Mode;
    readonly designOutdoor: Temperature;
    readonly month: number;
    readonly meanOutdoor: Temperature;
    readonly spread: TemperatureDifference;
  };
  /** How temperatures spread within a month was told from monthly means. */
  'spread-told-from-means': { readonly overYear: TemperatureDifference; readonly mildBelow: TemperatureDifference };
  /** The unit does not carry the design load alone. */
  'capacity-short': {
    readonly mode: Mode;
    readonly capacity: Power;
    readonly designLoad: Power;
    readonly capacityBalancePoint: Temperature;
    readonly unmetEnergy: Energy;
    readonly coveredShare: Fraction;
  };
}

const mode: Shape<Mode> = ['heating', 'cooling'];

/** Shapes of {@link BuildingFindingValues}. */
export const buildingFindingShapes: { readonly [C in keyof BuildingFindingValues]: Shape<BuildingFindingValues[C]> } = {
  'indoor-assumed': { mode, indoor: 'temperature' },
  'balance-point-assumed': { mode, balancePoint: 'temperature' },
  'balance-point-unusual': { mode, balancePoint: 'temperature', lowest: 'temperature', highest: 'temperature' },
  'balance-points-overlap': { heating: 'temperature', cooling: 'temperature' },
  'design-outdoor-doubtful': { mode, designOutdoor: 'temperature', month: 'count', meanOutdoor: 'temperature', spread: 'temperature difference' },
  'spread-told-from-means': { overYear: 'temperature difference', mildBelow: 'temperature difference' },
  'capacity-short': {
    mode,
    capacity: 'power',
    designLoad: 'power',
    capacityBalancePoint: 'temperature',
    unmetEnergy: 'energy',
    coveredShare: 'fraction',
  },
};
