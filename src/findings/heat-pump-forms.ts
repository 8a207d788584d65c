import type { ElectricCurrent, Fraction, Ratio, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { type FluidLimit, fluidLimitShape } from './fluid-limit.js';

type Mode = 'heating' | 'cooling';
type DerivedBy = 'polynomial fit' | 'scaled linear fit' | 'Carnot share' | 'regressions' | 'corrections';
type LimitReason =
  | 'the unit allows no more'
  | 'practice of horizontal loops'
  | 'distance from the ground'
  | 'freezing point of the fluid'
  | 'water without antifreeze'
  | 'the leaving fluid and the fall through the unit'
  | 'given by the user';

/** Values of the findings about fitted and corrected rating points, limits of the fluid and the electric service, by code. */
export interface HeatPumpFormValues {
  /** Rating points that nobody rated the unit at. */
  'rating-points-derived': { readonly mode: Mode; readonly derivedBy: DerivedBy };
  /** Rating points of an average unit, out of published regressions. */
  'rating-points-generic': {
    readonly supplyTemperature: Temperature;
    readonly disagreement: Fraction;
    readonly installedShare: Fraction;
  };
  /** A fitted form misses its points by much. */
  'fit-poor': { readonly mode: Mode; readonly worstError: Fraction; readonly usual: Fraction };
  /** A fit has as many coefficients as points. */
  'fit-without-spare': { readonly mode: Mode; readonly points: number };
  /** A fitted parabola of the capacity turns where it may be asked. */
  'fit-turns': { readonly mode: Mode; readonly enteringFluid: Temperature };
  /** A share of Carnot's COP that units do not have. */
  'carnot-share-unusual': { readonly share: Fraction; readonly least: Fraction; readonly most: Fraction };
  /** A share of Carnot's COP was led on beyond the temperatures of its points. */
  'carnot-share-extrapolated': { readonly cold: Temperature; readonly warm: Temperature };
  /** A correction of usual size, where the unit's own was not given. */
  'correction-typical': { readonly cause: 'antifreeze' | 'source flow' | 'air flow'; readonly capacityFactor: Ratio; readonly inputFactor: Ratio };
  /** A limit of the fluid is a suggestion that nobody has confirmed. */
  'limit-unconfirmed': { readonly limit: FluidLimit; readonly temperature: Temperature; readonly reason: LimitReason };
  /** A limit that the user set allows what the maker does not. */
  'limit-beyond-unit': { readonly limit: FluidLimit; readonly temperature: Temperature; readonly unitLimit: Temperature };
  /** A limit leaves so little drive against the ground that the loop gets absurdly long. */
  'limit-near-ground': {
    readonly limit: FluidLimit;
    readonly temperature: Temperature;
    readonly groundTemperature: Temperature;
    readonly needed: TemperatureDifference;
  };
  /** The freezing point is too close to a limit of the fluid. */
  'limit-freezes': {
    readonly limit: FluidLimit;
    readonly temperature: Temperature;
    readonly freezingPoint: Temperature;
    readonly needed: TemperatureDifference;
  };
  /** The freeze-protection stop acts before the lowest entering fluid is reached. */
  'unit-stops-before-limit': { readonly designLeaving: Temperature; readonly lowestLeaving: Temperature };
  /** The fluid stays so warm that water without antifreeze would do. */
  'plain-water-possible': { readonly designLeaving: Temperature; readonly least: Temperature };
  /** What is reckoned of a service is no more than a first look. */
  'electrician-decides': Readonly<Record<never, never>>;
  /** A service does not carry all that is put on it. */
  'service-short': { readonly addedCurrent: ElectricCurrent; readonly spareCurrent: ElectricCurrent; readonly shortBy: ElectricCurrent };
  /** A start that draws so much of the service that lights may be seen to dip. */
  'start-may-flicker': { readonly startingCurrent: ElectricCurrent; readonly serviceCurrent: ElectricCurrent; readonly startShare: Fraction };
  /** A power factor was assumed. */
  'power-factor-assumed': { readonly part: 'compressor' | 'circulators'; readonly powerFactor: Fraction };
}

const mode: Shape<Mode> = ['heating', 'cooling'];

/** Shapes of {@link HeatPumpFormValues}. */
export const heatPumpFormShapes: { readonly [C in keyof HeatPumpFormValues]: Shape<HeatPumpFormValues[C]> } = {
  'rating-points-derived': { mode, derivedBy: ['polynomial fit', 'scaled linear fit', 'Carnot share', 'regressions', 'corrections'] },
  'rating-points-generic': { supplyTemperature: 'temperature', disagreement: 'fraction', installedShare: 'fraction' },
  'fit-poor': { mode, worstError: 'fraction', usual: 'fraction' },
  'fit-without-spare': { mode, points: 'count' },
  'fit-turns': { mode, enteringFluid: 'temperature' },
  'carnot-share-unusual': { share: 'fraction', least: 'fraction', most: 'fraction' },
  'carnot-share-extrapolated': { cold: 'temperature', warm: 'temperature' },
  'correction-typical': { cause: ['antifreeze', 'source flow', 'air flow'], capacityFactor: 'ratio', inputFactor: 'ratio' },
  'limit-unconfirmed': {
    limit: fluidLimitShape,
    temperature: 'temperature',
    reason: [
      'the unit allows no more',
      'practice of horizontal loops',
      'distance from the ground',
      'freezing point of the fluid',
      'water without antifreeze',
      'the leaving fluid and the fall through the unit',
      'given by the user',
    ],
  },
  'limit-beyond-unit': { limit: fluidLimitShape, temperature: 'temperature', unitLimit: 'temperature' },
  'limit-near-ground': { limit: fluidLimitShape, temperature: 'temperature', groundTemperature: 'temperature', needed: 'temperature difference' },
  'limit-freezes': { limit: fluidLimitShape, temperature: 'temperature', freezingPoint: 'temperature', needed: 'temperature difference' },
  'unit-stops-before-limit': { designLeaving: 'temperature', lowestLeaving: 'temperature' },
  'plain-water-possible': { designLeaving: 'temperature', least: 'temperature' },
  'electrician-decides': {},
  'service-short': { addedCurrent: 'electric current', spareCurrent: 'electric current', shortBy: 'electric current' },
  'start-may-flicker': { startingCurrent: 'electric current', serviceCurrent: 'electric current', startShare: 'fraction' },
  'power-factor-assumed': { part: ['compressor', 'circulators'], powerFactor: 'fraction' },
};
