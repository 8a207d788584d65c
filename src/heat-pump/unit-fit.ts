import type { Finding } from '../findings/index.js';
import { joinedShape } from '../states/index.js';
import type { ElectricPower, Power, Ratio, Shape, Temperature } from '../units/index.js';
import type { DerivedRatingPoints } from './derived-points.js';
import { type FlowRatingPoint, flowRatingPointShape } from './fit-points.js';
import { type FitQuality, fitQualityShape } from './fit-quality.js';
import type { FittedState } from './fitted-state.js';
import type { RatingOrigin } from './heat-pump-input.js';

/** A unit to be told by two polynomials. */
export interface UnitFitInput {
  /** Heating or cooling. */
  readonly mode: 'heating' | 'cooling';
  /** Where the points come from. */
  readonly ratingOrigin: RatingOrigin;
  /** Straight lines over the entering fluid, from two settings of it, or parabolas, from three. */
  readonly form: 'linear' | 'quadratic';
  /** Rating points, at one flow or at several, 2 to 1000. */
  readonly points: readonly FlowRatingPoint[];
}

/** The numbers of a fitted unit. With t the number of degrees Celsius and x the flow over the rated one, each quantity is a(t) · f(x), and f(1) = 1. */
export interface UnitFitNumbers extends FitQuality {
  /** Coefficients of a for the capacity, for rising powers of t [W]. */
  readonly capacityTerms: readonly Power[];
  /** Coefficients of f for the capacity, for rising powers of x; 1 alone where all points have one flow [1]. */
  readonly capacityFlowTerms: readonly Ratio[];
  /** Coefficients of a for the electric input [W]. */
  readonly powerTerms: readonly ElectricPower[];
  /** Coefficients of f for the electric input [1]. */
  readonly powerFlowTerms: readonly Ratio[];
  /** Standard errors of the coefficients; absent where no point is left to tell them. */
  readonly termErrors?: UnitFitErrors;
  /** Coldest entering fluid of the points [degC]. */
  readonly lowest: Temperature;
  /** Warmest entering fluid of the points [degC]. */
  readonly highest: Temperature;
  /** Least flow of the points over the rated one [1]. */
  readonly leastFlowRatio: Ratio;
  /** Greatest flow of the points over the rated one [1]. */
  readonly greatestFlowRatio: Ratio;
}

/** Standard errors of the coefficients of a fitted unit, each in the unit of its coefficient. */
export interface UnitFitErrors {
  /** Of the capacity over the entering fluid [W]. */
  readonly capacityTerms: readonly Power[];
  /** Of the capacity over the flow [1]. */
  readonly capacityFlowTerms: readonly Ratio[];
  /** Of the electric input over the entering fluid [W]. */
  readonly powerTerms: readonly ElectricPower[];
  /** Of the electric input over the flow [1]. */
  readonly powerFlowTerms: readonly Ratio[];
}

/** A fitted unit. */
export interface UnitFit extends UnitFitNumbers {
  /** What to look at. */
  readonly findings: readonly Finding[];
  /**
   * The unit at an entering fluid temperature [degC], within the points and 2 K beyond, and a flow over the rated one [1], within the points.
   * Without a flow: the rated one, or the flow of the points where all have the same. Refuses outside.
   */
  readonly at: (enteringFluid: Temperature, flowRatio?: Ratio) => FittedState;
  /** Rating points of the fit at one flow [1], at the ends of its points and between: what `performanceMap` needs to give the fit back. */
  readonly ratingPoints: (flowRatio?: Ratio) => DerivedRatingPoints;
}

/** Shape of {@link UnitFitInput}. */
export const unitFitInputShape: Shape<UnitFitInput> = {
  mode: ['heating', 'cooling'],
  ratingOrigin: ['maker', 'measured', 'estimated', 'invented'],
  form: ['linear', 'quadratic'],
  points: { list: flowRatingPointShape },
};

/** Shape of {@link UnitFitErrors}. */
export const unitFitErrorsShape: Shape<UnitFitErrors> = {
  capacityTerms: { list: 'power' },
  capacityFlowTerms: { list: 'ratio' },
  powerTerms: { list: 'electric power' },
  powerFlowTerms: { list: 'ratio' },
};

/** Shape of {@link UnitFitNumbers}. */
export const unitFitNumbersShape: Shape<UnitFitNumbers> = /* @__PURE__ */ joinedShape(fitQualityShape, {
  capacityTerms: { list: 'power' },
  capacityFlowTerms: { list: 'ratio' },
  powerTerms: { list: 'electric power' },
  powerFlowTerms: { list: 'ratio' },
  termErrors: { optional: unitFitErrorsShape },
  lowest: 'temperature',
  highest: 'temperature',
  leastFlowRatio: 'ratio',
  greatestFlowRatio: 'ratio',
});
