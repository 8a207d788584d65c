import type { Finding } from '../findings/index.js';
import { type Band, bandShape } from '../states/index.js';
import type { Fraction, Power, Ratio, Shape, Temperature } from '../units/index.js';
import type { CarnotInput } from './cop.js';
import type { DerivedRatingPoints } from './derived-points.js';
import type { RatingOrigin } from './heat-pump-input.js';

/** A COP between two temperatures. */
export interface CarnotSharePoint extends CarnotInput {
  /** Heat over electricity, 1.05 to 50 [1]. */
  readonly cop: Ratio;
}

/** What a share of Carnot's COP is taken from. */
export interface CarnotShareInput {
  /** Fluid entering and water supplied, or evaporation and condensation; the two shares differ and must not be mixed. */
  readonly temperaturesOf: 'fluids' | 'refrigerant';
  /** Where the points come from. */
  readonly ratingOrigin: RatingOrigin;
  /** Rating points in heating, at least 10 K between cold and warm, 2 to 1000. */
  readonly points: readonly CarnotSharePoint[];
}

/** The share of Carnot's COP that a unit reaches. */
export interface CarnotShareNumbers {
  /** Which temperatures the share belongs to. */
  readonly temperaturesOf: 'fluids' | 'refrigerant';
  /** Mean of the points [1]. */
  readonly carnotShare: Fraction;
  /** Standard deviation of one point about it [1]. */
  readonly shareDeviation: Fraction;
  /** COP of each point less that of the mean share, in the order given [1]. */
  readonly copResiduals: readonly Ratio[];
  /** Largest of them over the COP of its point, without its sign [1]. */
  readonly worstError: Fraction;
}

/** A COP told by a share of Carnot's. */
export interface CarnotPrediction {
  /** COP with the limits that a further point of the same unit lies between, 90 of 100 times [1]. */
  readonly copBand: Band<'ratio'>;
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Where rating points are wanted of a share of Carnot's COP, which tells no capacity. */
export interface CarnotPointsInput {
  /** Water supplied, 20 to 80 [degC]. */
  readonly supplyTemperature: Temperature;
  /** Capacity at each entering fluid, 2 to 100 of them. */
  readonly capacityRows: readonly EnteringCapacity[];
}

/** A heating capacity at an entering fluid. */
export interface EnteringCapacity {
  /** Fluid entering the heat pump [degC]. */
  readonly enteringFluid: Temperature;
  /** Heating capacity there, 1 to 1e8 [W]. */
  readonly capacity: Power;
}

/** A {@link CarnotShareNumbers} that can be asked. */
export interface CarnotShare extends CarnotShareNumbers {
  /** What to look at. */
  readonly findings: readonly Finding[];
  /** COP between two other temperatures, at least 10 K apart and within 20 K of those of the points. */
  readonly copAt: (between: CarnotInput) => CarnotPrediction;
  /** Rating points over the entering fluid, of a share between fluids. */
  readonly ratingPoints: (wanted: CarnotPointsInput) => DerivedRatingPoints;
}

/** Shape of {@link CarnotSharePoint}. */
export const carnotSharePointShape: Shape<CarnotSharePoint> = { cold: 'temperature', warm: 'temperature', cop: 'ratio' };

/** Shape of {@link CarnotShareInput}. */
export const carnotShareInputShape: Shape<CarnotShareInput> = {
  temperaturesOf: ['fluids', 'refrigerant'],
  ratingOrigin: ['maker', 'measured', 'estimated', 'invented'],
  points: { list: carnotSharePointShape },
};

/** Shape of {@link CarnotShareNumbers}. */
export const carnotShareNumbersShape: Shape<CarnotShareNumbers> = {
  temperaturesOf: ['fluids', 'refrigerant'],
  carnotShare: 'fraction',
  shareDeviation: 'fraction',
  copResiduals: { list: 'ratio' },
  worstError: 'fraction',
};

/** Shape of {@link CarnotPrediction}, its findings apart. */
export const carnotPredictionShape: Shape<Omit<CarnotPrediction, 'findings'>> = { copBand: /* @__PURE__ */ bandShape('ratio') };

/** Shape of {@link EnteringCapacity}. */
export const enteringCapacityShape: Shape<EnteringCapacity> = { enteringFluid: 'temperature', capacity: 'power' };

/** Shape of {@link CarnotPointsInput}. */
export const carnotPointsInputShape: Shape<CarnotPointsInput> = { supplyTemperature: 'temperature', capacityRows: { list: enteringCapacityShape } };
