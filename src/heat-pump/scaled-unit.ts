import type { Finding } from '../findings/index.js';
import { joinedShape } from '../states/index.js';
import type { Ratio, Shape, Temperature } from '../units/index.js';
import type { DerivedRatingPoints } from './derived-points.js';
import { type FlowRatingPoint, flowRatingPointShape } from './fit-points.js';
import { type FitQuality, fitQualityShape } from './fit-quality.js';
import type { FittedState } from './fitted-state.js';
import type { RatingOrigin } from './heat-pump-input.js';

/** What a fitted unit may depend on. */
export type ScaledQuantity = 'load side' | 'entering fluid' | 'load flow' | 'source flow';

/** A rating point at a load side and flows of its own. */
export interface ScaledRatingPoint extends FlowRatingPoint {
  /** Air or water entering the load side, −10 to 70; in cooling of air its wet bulb [degC]. */
  readonly loadSide: Temperature;
  /** Air or water flow on the load side over the rated one, 0.2 to 3; 1 when left out [1]. */
  readonly loadFlowRatio?: Ratio;
}

/** A unit to be told by straight lines over several quantities at once. */
export interface ScaledUnitInput {
  /** Heating or cooling. */
  readonly mode: 'heating' | 'cooling';
  /** Where the points come from. */
  readonly ratingOrigin: RatingOrigin;
  /** Rating points, more than the quantities that vary among them, 2 to 1000. */
  readonly points: readonly ScaledRatingPoint[];
}

/** Where a fitted unit is asked. */
export interface ScaledPlace {
  /** Fluid entering the heat pump, within the points and 2 K beyond [degC]. */
  readonly enteringFluid: Temperature;
  /** Air or water entering the load side, within the points and 2 K beyond [degC]. */
  readonly loadSide: Temperature;
  /** Flow on the loop side over the rated one, within the points; 1 when left out [1]. */
  readonly flowRatio?: Ratio;
  /** Flow on the load side over the rated one, within the points; 1 when left out [1]. */
  readonly loadFlowRatio?: Ratio;
}

/** What is fitted, with T in kelvin: Q/Qref = E1 + E2 T(load side)/283.15 + E3 T(entering fluid)/283.15 + E4 load flow + E5 source flow. */
export interface ScaledUnitNumbers extends FitQuality {
  /** Quantities that vary among the points and so have a coefficient. The others are held at what they are. */
  readonly varying: readonly ScaledQuantity[];
  /** E1, and the coefficient of each varying quantity, for the capacity over that of the first point [1]. */
  readonly capacityCoefficients: readonly Ratio[];
  /** The same for the electric input over that of the first point [1]. */
  readonly powerCoefficients: readonly Ratio[];
  /** Standard errors of the coefficients of the capacity; absent where no point is left to tell them [1]. */
  readonly capacityCoefficientErrors?: readonly Ratio[];
  /** Standard errors of the coefficients of the electric input [1]. */
  readonly powerCoefficientErrors?: readonly Ratio[];
}

/** A unit fitted so. */
export interface ScaledUnit extends ScaledUnitNumbers {
  /** What to look at. */
  readonly findings: readonly Finding[];
  /** The unit at a place among its points. */
  readonly at: (place: ScaledPlace) => FittedState;
  /** Rating points over the entering fluid at one load side and one pair of flows, for `performanceMap`. */
  readonly ratingPoints: (at: Omit<ScaledPlace, 'enteringFluid'>) => DerivedRatingPoints;
}

/** Shape of {@link ScaledRatingPoint}. */
export const scaledRatingPointShape: Shape<ScaledRatingPoint> = /* @__PURE__ */ joinedShape(flowRatingPointShape, {
  loadSide: 'temperature',
  loadFlowRatio: { optional: 'ratio' },
});

/** Shape of {@link ScaledUnitInput}. */
export const scaledUnitInputShape: Shape<ScaledUnitInput> = {
  mode: ['heating', 'cooling'],
  ratingOrigin: ['maker', 'measured', 'estimated', 'invented'],
  points: { list: scaledRatingPointShape },
};

/** Shape of {@link ScaledPlace}. */
export const scaledPlaceShape: Shape<ScaledPlace> = {
  enteringFluid: 'temperature',
  loadSide: 'temperature',
  flowRatio: { optional: 'ratio' },
  loadFlowRatio: { optional: 'ratio' },
};

/** Shape of {@link ScaledUnitNumbers}. */
export const scaledUnitNumbersShape: Shape<ScaledUnitNumbers> = /* @__PURE__ */ joinedShape(fitQualityShape, {
  varying: { list: ['load side', 'entering fluid', 'load flow', 'source flow'] },
  capacityCoefficients: { list: 'ratio' },
  powerCoefficients: { list: 'ratio' },
  capacityCoefficientErrors: { optional: { list: 'ratio' } },
  powerCoefficientErrors: { optional: { list: 'ratio' } },
});
