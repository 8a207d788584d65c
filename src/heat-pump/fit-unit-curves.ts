import { demand, demandChoice, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { ElectricPower, Power, Ratio, Temperature } from '../units/index.js';
import type { DerivedRatingPoints } from './derived-points.js';
import { type FlowRating, readFlowRatings, refuseFew, settings } from './fit-points.js';
import { fitQuality, fitQualityFindings } from './fit-quality.js';
import { type FittedState, fittedState } from './fitted-state.js';
import { type ProductFit, fitProduct } from './product-fit.js';
import { EXTRAPOLATED } from './unit-curves.js';
import type { UnitFit, UnitFitErrors, UnitFitInput, UnitFitNumbers } from './unit-fit.js';

/** Number of coefficients over the entering fluid. */
const MAIN = { linear: 2, quadratic: 3 } as const;
/** Square of the correlation of flow and entering fluid above which the two cannot be told apart [1]. */
const MOST_TOGETHER = 0.98;
const polynomial = (coefficients: readonly number[], at: number): number => coefficients.reduceRight((sum, each) => sum * at + each, 0);

/**
 * Capacity and electric input of a unit as polynomials of the entering fluid, times a polynomial of the flow, by least squares.
 *
 * For a table with scatter, or one at several flows. A smooth table at one flow is told better by `performanceMap`, which passes through every point.
 * The flow gets a straight line from two settings of it and a parabola from three; with one there is none. COP is derived, never fitted: fitted by itself
 * it would break heat = ground + electricity.
 *
 * @param input - mode, form, and rating points; see {@link UnitFitInput}
 * @returns coefficients with standard errors, residuals, the unit anywhere among its points, rating points for a map, and findings
 * @throws InputError for impossible points, fewer than the form needs, or points that do not tell entering fluid and flow apart
 * @remarks
 * Least squares of absolute errors (`leastSquares`); the product by Gauss and Newton's steps. Checked: the table of the invented unit, rounded to its four
 * digits, gives its equations back.
 *
 * Invariants: points of such a product are given back; the fit is linear in the scale of the points; heat = ground + electricity.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, electricKilowatts, kilowatts, watts } = await import('../units/index.js');
 * const points = [ // an invented unit
 *   { enteringFluid: celsius(-5), capacity: kilowatts(6.9), power: electricKilowatts(2.29) },
 *   { enteringFluid: celsius(0), capacity: kilowatts(8), power: electricKilowatts(2.35) },
 *   { enteringFluid: celsius(5), capacity: kilowatts(9.1), power: electricKilowatts(2.41) },
 *   { enteringFluid: celsius(10), capacity: kilowatts(10.3), power: electricKilowatts(2.5) },
 * ];
 * const fit = fitUnitCurves({ mode: 'heating', ratingOrigin: 'invented', form: 'quadratic', points });
 * expect(watts.of(fit.at(celsius(3)).capacity)).toBeCloseTo(8657, 0);
 * expect(fit.worstError).toBeLessThan(0.005);
 * expect(() => fit.at(celsius(-8))).toThrow('at least -7');
 * ```
 */
export function fitUnitCurves({ mode, ratingOrigin, form, points }: UnitFitInput): UnitFit {
  demandChoice('mode', mode, ['heating', 'cooling']);
  demandChoice('ratingOrigin', ratingOrigin, ['maker', 'measured', 'estimated', 'invented']);
  demandChoice('form', form, ['linear', 'quadratic']);
  const ratings = readFlowRatings(mode, points);
  const mainSize = MAIN[form];
  const found = settings(ratings, 'enteringFluid');
  if (found < mainSize) refuseFew(found, `at least ${String(mainSize)} entering temperatures`, 'two tell a straight line, three a parabola');
  const bendSize = Math.min(settings(ratings, 'flowRatio') - 1, 2);
  const size = mainSize + bendSize;
  if (ratings.length < size)
    refuseFew(ratings.length, `at least ${String(size)}, one for each coefficient`, 'give the other flows, or those of one flow');
  const capacity = fitted(ratings, (rating) => rating.capacity, mainSize, bendSize);
  const power = fitted(ratings, (rating) => rating.power, mainSize, bendSize);
  const numbers = numbersOf(ratings, capacity, power, size);
  const at = (enteringFluid: Temperature, flowRatio?: Ratio): FittedState => {
    const range = { atLeast: numbers.lowest - EXTRAPOLATED, atMost: numbers.highest + EXTRAPOLATED };
    demand('enteringFluid', 'temperature', enteringFluid, range, 'the points do not reach there; a fit led on is worth nothing');
    const x = demandFlow(numbers, flowRatio);
    const of = (fit: ProductFit): number => polynomial(fit.main, enteringFluid) * polynomial(fit.factor, x);
    return fittedState(mode, enteringFluid, of(capacity), of(power));
  };
  const findings = [...fitQualityFindings(mode, numbers), ...turns(mode, numbers)];
  return {
    ...numbers,
    findings,
    at,
    ratingPoints: (flowRatio): DerivedRatingPoints => ({
      derivedBy: 'polynomial fit',
      ratingOrigin,
      points: [numbers.lowest, ((numbers.lowest + numbers.highest) / 2) as Temperature, numbers.highest].map((place) => {
        const state = at(place, flowRatio);
        return { enteringFluid: place, capacity: state.capacity, power: state.power };
      }),
      findings: [
        { code: 'rating-points-derived', level: 'note', values: { mode, derivedBy: 'polynomial fit' }, source: 'leastSquares' },
        ...findings,
      ],
    }),
  };
}

function fitted(ratings: readonly FlowRating[], of: (rating: FlowRating) => number, mainSize: number, bendSize: number): ProductFit {
  const points = ratings.map((rating) => ({ t: rating.enteringFluid, x: rating.flowRatio, y: of(rating) }));
  const fit = bendSize > 0 && together(points) ? undefined : fitProduct(points, mainSize, bendSize);
  if (fit !== undefined) return fit;
  throw new InputError({
    code: 'impossible',
    argument: 'points',
    value: { kind: 'count', value: points.length },
    allowed: 'several entering temperatures at several flows, so that the two can be told apart',
    hint: 'every entering temperature may have come with a flow of its own',
  });
}

/** Whether flow and entering fluid go up and down together, so that what one does cannot be told from what the other does. */
function together(points: readonly { readonly t: number; readonly x: number }[]): boolean {
  const mean = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;
  const [ts, xs] = [mean(points.map(({ t }) => t)), mean(points.map(({ x }) => x))];
  const product = (of: (point: { readonly t: number; readonly x: number }) => number): number => mean(points.map(of));
  const both = product(({ t, x }) => (t - ts) * (x - xs));
  return both ** 2 > MOST_TOGETHER * product(({ t }) => (t - ts) ** 2) * product(({ x }) => (x - xs) ** 2);
}

function numbersOf(ratings: readonly FlowRating[], capacity: ProductFit, power: ProductFit, size: number): UnitFitNumbers {
  const quality = fitQuality(ratings, capacity.residuals, power.residuals, ratings.length - size);
  const { capacityDeviation, powerDeviation } = quality;
  const places = ratings.map(({ enteringFluid }) => enteringFluid);
  const flows = ratings.map(({ flowRatio }) => flowRatio);
  const times = (deviation: number, errors: readonly number[]): readonly number[] => errors.map((error) => deviation * error);
  return {
    ...quality,
    capacityTerms: capacity.main as readonly Power[],
    capacityFlowTerms: capacity.factor as readonly Ratio[],
    powerTerms: power.main as readonly ElectricPower[],
    powerFlowTerms: power.factor as readonly Ratio[],
    ...(capacityDeviation !== undefined &&
      powerDeviation !== undefined && {
        termErrors: {
          capacityTerms: times(capacityDeviation, capacity.mainErrors),
          capacityFlowTerms: times(capacityDeviation, capacity.factorErrors),
          powerTerms: times(powerDeviation, power.mainErrors),
          powerFlowTerms: times(powerDeviation, power.factorErrors),
        } as UnitFitErrors,
      }),
    lowest: Math.min(...places) as Temperature,
    highest: Math.max(...places) as Temperature,
    leastFlowRatio: Math.min(...flows) as Ratio,
    greatestFlowRatio: Math.max(...flows) as Ratio,
  };
}

function demandFlow({ leastFlowRatio, greatestFlowRatio }: UnitFitNumbers, flowRatio?: Ratio): number {
  const usual = greatestFlowRatio - leastFlowRatio < 0.01 ? leastFlowRatio : (1 as Ratio);
  const x = flowRatio ?? usual;
  const range = { atLeast: leastFlowRatio - 1e-9, atMost: greatestFlowRatio + 1e-9 };
  demand('flowRatio', 'ratio', x, range, 'the points have no such flow; give the one wanted');
  return x;
}

/** That the fitted capacity turns where the fit may be asked, as no unit's does. */
function turns(mode: 'heating' | 'cooling', { capacityTerms, lowest, highest }: UnitFitNumbers): readonly Finding[] {
  const [, rise = 0, bend = 0] = capacityTerms;
  const enteringFluid = (-rise / (2 * bend)) as Temperature;
  if (!(enteringFluid > lowest - EXTRAPOLATED && enteringFluid < highest + EXTRAPOLATED)) return [];
  return [{ code: 'fit-turns', level: 'warning', values: { mode, enteringFluid }, source: 'common practice' }];
}
