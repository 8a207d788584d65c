import type { Energy, Fraction, Power, Ratio, Shape, Temperature, TemperatureDifference, Volume } from '../units/index.js';

type Mode = 'heating' | 'cooling';
type Heater = 'old oil boiler' | 'oil boiler' | 'condensing boiler' | 'non-condensing boiler' | 'electric resistance';

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
    /** What the closed form may be off, towards less and more. */
    readonly unmetLow: Energy;
    readonly unmetHigh: Energy;
    readonly coveredShare: Fraction;
  };
  /** Hot water is stored cooler than guidance against legionella asks for. */
  'hot-water-stored-cool': { readonly storageTemperature: Temperature; readonly guidance: Temperature };
  /** Stored hot water scalds. */
  'hot-water-scalds': { readonly storageTemperature: Temperature; readonly scaldsAbove: Temperature };
  /** Hot water is stored hotter than the unit can make it. */
  'hot-water-above-supply': { readonly storageTemperature: Temperature; readonly highestSupply: Temperature; readonly shareAbove: Fraction };
  /** A person draws more or less hot water than people do. */
  'hot-water-draw-unusual': { readonly drawOfDay: Volume; readonly lowest: Volume; readonly highest: Volume };
  /** Hot water keeps on taking heat from the ground in the month in which it would rest. */
  'ground-without-rest': { readonly month: number; readonly hotWaterHeat: Power; readonly restShare: Fraction };
  /** What the heater makes of its fuel was taken from what heaters of its kind do. */
  'useful-heat-assumed': { readonly heater: Heater; readonly usefulRatio: Ratio; readonly usefulRatioError: Fraction };
  /** Periods at the end of the bills that no reading closes. */
  'readings-left-out': { readonly leftOut: number };
  /** A part of the line was held, so that its error is not in the bands. */
  'line-partly-held': { readonly baseLoadHeld: boolean; readonly balancePointHeld: boolean };
  /** Bills scatter about the line more than a house alone makes them. */
  'bills-fit-poorly': { readonly residualShare: Fraction; readonly highest: Fraction };
  /** The load that does not hang on the weather came out negative. */
  'base-load-below-nothing': { readonly baseLoad: Power; readonly baseLoadError: Power };
  /** The design heat loss lies outside the band that the bills give. */
  'heat-loss-disagrees': {
    readonly stated: Power;
    readonly fitted: Power;
    readonly fittedLow: Power;
    readonly fittedHigh: Power;
    readonly coverage: Fraction;
  };
  /** After a set-back the unit lacks heat to be warm again in time. */
  'setback-reheat-short': {
    readonly capacity: Power;
    readonly steadyLoad: Power;
    readonly reheatLoad: Power;
    readonly unmetEnergy: Energy;
    readonly savedEnergy: Energy;
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
    unmetLow: 'energy',
    unmetHigh: 'energy',
    coveredShare: 'fraction',
  },
  'hot-water-stored-cool': { storageTemperature: 'temperature', guidance: 'temperature' },
  'hot-water-scalds': { storageTemperature: 'temperature', scaldsAbove: 'temperature' },
  'hot-water-above-supply': { storageTemperature: 'temperature', highestSupply: 'temperature', shareAbove: 'fraction' },
  'hot-water-draw-unusual': { drawOfDay: 'volume', lowest: 'volume', highest: 'volume' },
  'ground-without-rest': { month: 'count', hotWaterHeat: 'power', restShare: 'fraction' },
  'useful-heat-assumed': {
    heater: ['old oil boiler', 'oil boiler', 'condensing boiler', 'non-condensing boiler', 'electric resistance'],
    usefulRatio: 'ratio',
    usefulRatioError: 'fraction',
  },
  'readings-left-out': { leftOut: 'count' },
  'line-partly-held': { baseLoadHeld: 'flag', balancePointHeld: 'flag' },
  'bills-fit-poorly': { residualShare: 'fraction', highest: 'fraction' },
  'base-load-below-nothing': { baseLoad: 'power', baseLoadError: 'power' },
  'heat-loss-disagrees': { stated: 'power', fitted: 'power', fittedLow: 'power', fittedHigh: 'power', coverage: 'fraction' },
  'setback-reheat-short': { capacity: 'power', steadyLoad: 'power', reheatLoad: 'power', unmetEnergy: 'energy', savedEnergy: 'energy' },
};
