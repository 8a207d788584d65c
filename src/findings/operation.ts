import type {
  DayOfYear,
  Fraction,
  Length,
  LengthPerPower,
  Ratio,
  Shape,
  Temperature,
  TemperatureDifference,
  Time,
  VolumetricWater,
} from '../units/index.js';
import { type FluidLimit, fluidLimitShape } from './fluid-limit.js';

/** Values of the findings that the operation room raises, by code. */
export interface OperationFindingValues {
  /** The pipe per ton lies outside what is usual for the layout. */
  'outside-plausible-band': { readonly pipePerCapacity: LengthPerPower; readonly low: LengthPerPower; readonly high: LengthPerPower };
  /** A guideline was read at more or fewer hours a year than it covers. */
  'guideline-hours-outside': { readonly fullLoadHours: Time; readonly read: Time };
  /** Film and fluid temperature feed on each other so strongly that the fluid had more than one possible state, so long in the year. */
  'film-states': { readonly time: Time };
  /** Soil freezes that is too dry for its ice to count. */
  'ice-not-credited': { readonly waterByVolume: VolumetricWater; readonly low: VolumetricWater };
  /** Frozen soil of neighbouring pipes, or of a pipe and the surface, has met. */
  'ice-merged': { readonly day: DayOfYear; readonly frozenRadius: Length };
  /** Ice around the pipes outlasts the year. */
  'ice-remains': { readonly frozenRadius: Length };
  /** The undisturbed ground at the pipes freezes. */
  'frost-at-pipes': { readonly undisturbed: Temperature };
  /** Frozen soil comes near a structure, or reaches it where the clearance is not above 0. */
  'ice-near-structure': { readonly structureClearance: Length };
  /** A section, by number from 1, gives much less of the heat than it has of the pipe. */
  'section-lags': { readonly section: number; readonly heatingPart: Ratio; readonly pipeShare: Fraction };
  /** One section changes the wall of another through the ground by more than may be left out. */
  'section-neighbour': { readonly change: TemperatureDifference; readonly day: DayOfYear };
  /** In the first winter, with loosened fill, the fluid goes beyond a limit that it keeps once the fill has settled. */
  'first-winter-beyond-limit': {
    readonly limit: FluidLimit;
    readonly reached: Temperature;
    readonly day: DayOfYear;
    readonly limitMargin: TemperatureDifference;
  };
}

/** Shapes of {@link OperationFindingValues}. */
export const operationFindingShapes: { readonly [C in keyof OperationFindingValues]: Shape<OperationFindingValues[C]> } = {
  'outside-plausible-band': { pipePerCapacity: 'length per power', low: 'length per power', high: 'length per power' },
  'guideline-hours-outside': { fullLoadHours: 'time', read: 'time' },
  'film-states': { time: 'time' },
  'ice-not-credited': { waterByVolume: 'volumetric water', low: 'volumetric water' },
  'ice-merged': { day: 'day of year', frozenRadius: 'length' },
  'ice-remains': { frozenRadius: 'length' },
  'frost-at-pipes': { undisturbed: 'temperature' },
  'ice-near-structure': { structureClearance: 'length' },
  'section-lags': { section: 'count', heatingPart: 'ratio', pipeShare: 'fraction' },
  'section-neighbour': { change: 'temperature difference', day: 'day of year' },
  'first-winter-beyond-limit': {
    limit: fluidLimitShape,
    reached: 'temperature',
    day: 'day of year',
    limitMargin: 'temperature difference',
  },
};
