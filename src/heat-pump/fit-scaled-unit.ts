import { demand, demandChoice, InputError } from '../errors/index.js';
import type { Ratio, Temperature } from '../units/index.js';
import type { DerivedRatingPoints } from './derived-points.js';
import { fitColumns } from './fit-columns.js';
import { type FlowRating, readFlowRatings, refuseFew } from './fit-points.js';
import { fitQuality, fitQualityFindings } from './fit-quality.js';
import { type FittedState, fittedState } from './fitted-state.js';
import { demandPlace, type Reach, reachOf } from './scaled-reach.js';
import type { ScaledPlace, ScaledQuantity, ScaledUnit, ScaledUnitInput, ScaledUnitNumbers } from './scaled-unit.js';

/** Reference temperature of the form [K]. */
const REFERENCE = 283.15;
const KELVIN = 273.15;

/** A point or a place as plain numbers. */
type Place = Required<{ readonly [P in keyof ScaledPlace]: number }>;
type Rated = Place & Pick<FlowRating, 'capacity' | 'power'>;

/** The quantities in the order of their coefficients, each as the form has it. */
const QUANTITIES: readonly (readonly [ScaledQuantity, keyof Place, (place: Place) => number])[] = [
  ['load side', 'loadSide', ({ loadSide }) => (loadSide + KELVIN) / REFERENCE],
  ['entering fluid', 'enteringFluid', ({ enteringFluid }) => (enteringFluid + KELVIN) / REFERENCE],
  ['load flow', 'loadFlowRatio', ({ loadFlowRatio }) => loadFlowRatio],
  ['source flow', 'flowRatio', ({ flowRatio }) => flowRatio],
];

/**
 * Capacity and electric input of a unit as straight lines of load side, entering fluid and both flows at once, by least squares.
 *
 * The form of Lash and of Tang, for a table that varies several things and is not full enough for curves over each. It has no bends and no products: see the
 * residuals. A quantity that is the same in all points gets no coefficient, and is asked at that value alone. COP is derived, never fitted.
 *
 * @param input - mode and rating points; see {@link ScaledUnitInput}
 * @returns coefficients with standard errors, residuals, the unit among its points, rating points for a map, and findings
 * @throws InputError for impossible points, too few, or points in which two quantities always change together
 * @remarks
 * Sources: `lash1992`, `tang2005`, the form; `leastSquares`. The reference capacity and power are those of the first point. In cooling of air the load side is the
 * wet bulb, and only total capacity is told, not the sensible part of it.
 *
 * Invariants: points that lie on such lines are given back; the order of the points does not matter to what is told; heat = ground + electricity.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, electricKilowatts, kilowatts } = await import('../units/index.js');
 * const row = (t: number, water: number, capacity: number, power: number) =>
 *   ({ enteringFluid: celsius(t), loadSide: celsius(water), capacity: kilowatts(capacity), power: electricKilowatts(power) });
 * const points = [row(0, 30, 8, 1.8), row(0, 40, 7.7, 2.2), row(5, 30, 9.2, 1.82), row(5, 40, 8.8, 2.23)]; // an invented unit
 * const unit = fitScaledUnit({ mode: 'heating', ratingOrigin: 'invented', points });
 * expect(unit.varying).toEqual(['load side', 'entering fluid']);
 * expect(kilowatts.of(unit.at({ enteringFluid: celsius(2), loadSide: celsius(35) }).capacity)).toBeCloseTo(8.31, 2);
 * expect(unit.worstError).toBeLessThan(0.005);
 * ```
 */
export function fitScaledUnit({ mode, ratingOrigin, points }: ScaledUnitInput): ScaledUnit {
  demandChoice('mode', mode, ['heating', 'cooling']);
  demandChoice('ratingOrigin', ratingOrigin, ['maker', 'measured', 'estimated', 'invented']);
  const rated: readonly Rated[] = readFlowRatings(mode, points).map((rating, index) => {
    const { loadSide, loadFlowRatio = 1 } = points[index] ?? {};
    demand(`points.${String(index)}.loadSide`, 'temperature', loadSide as Temperature, { atLeast: -10, atMost: 70 });
    demand(`points.${String(index)}.loadFlowRatio`, 'ratio', loadFlowRatio, { atLeast: 0.2, atMost: 3 }, 'a flow over the rated flow, not a flow');
    return { ...rating, loadSide: Number(loadSide), loadFlowRatio };
  });
  const reach = reachOf(rated);
  const terms = QUANTITIES.filter(([, key]) => reach[key].varies);
  const size = 1 + terms.length;
  if (rated.length < size)
    refuseFew(rated.length, `at least ${String(size)}, one for each coefficient`, 'give the points of one flow, or of one load side');
  const columns = [rated.map(() => 1), ...terms.map(([, , of]) => rated.map(of))];
  const [first] = rated;
  const [ratedCapacity = 1, ratedPower = 1] = [first?.capacity, first?.power];
  const capacity = fitted(columns, rated, (point) => point.capacity / ratedCapacity);
  const power = fitted(columns, rated, (point) => point.power / ratedPower);
  const times = (factor: number, values: readonly number[]): readonly number[] => values.map((value) => factor * value);
  const quality = fitQuality(rated, times(ratedCapacity, capacity.residuals), times(ratedPower, power.residuals), rated.length - size);
  const { capacityDeviation, powerDeviation } = quality;
  const numbers: ScaledUnitNumbers = {
    ...quality,
    varying: terms.map(([name]) => name),
    capacityCoefficients: capacity.coefficients as readonly Ratio[],
    powerCoefficients: power.coefficients as readonly Ratio[],
    ...(capacityDeviation !== undefined && {
      capacityCoefficientErrors: times(capacityDeviation / ratedCapacity, capacity.errors) as readonly Ratio[],
    }),
    ...(powerDeviation !== undefined && { powerCoefficientErrors: times(powerDeviation / ratedPower, power.errors) as readonly Ratio[] }),
  };
  const at = (asked: ScaledPlace): FittedState => {
    const place = demandPlace(reach, asked);
    const row = [1, ...terms.map(([, , of]) => of(place))];
    const told = (coefficients: readonly number[]): number => row.reduce((sum, each, i) => sum + each * (coefficients[i] ?? 0), 0);
    return fittedState(mode, asked.enteringFluid, ratedCapacity * told(capacity.coefficients), ratedPower * told(power.coefficients));
  };
  const findings = fitQualityFindings(mode, quality);
  return {
    ...numbers,
    findings,
    at,
    ratingPoints: (place) => pointsOf({ mode, ratingOrigin }, findings, ends(reach), (t) => at({ ...place, enteringFluid: t })),
  };
}

interface Lines {
  readonly coefficients: readonly number[];
  readonly residuals: readonly number[];
  readonly errors: readonly number[];
}

function fitted(columns: readonly (readonly number[])[], rated: readonly Rated[], of: (point: Rated) => number): Lines {
  const fit = fitColumns(columns, rated.map(of));
  if (fit !== undefined) {
    const unit = (i: number): readonly number[] => columns.map((_, k) => Number(i === k));
    return { ...fit, errors: columns.map((_, i) => Math.sqrt(fit.varianceOf(unit(i)))) };
  }
  throw new InputError({
    code: 'impossible',
    argument: 'points',
    value: { kind: 'count', value: rated.length },
    allowed: 'points in which each quantity changes without the others',
    hint: 'two of load side, entering fluid and the flows may always change together',
  });
}

const ends = ({ enteringFluid: { low, high } }: Reach): readonly [Temperature, Temperature] => [low as Temperature, high as Temperature];

function pointsOf(
  { mode, ratingOrigin }: Pick<ScaledUnitInput, 'mode' | 'ratingOrigin'>,
  findings: ScaledUnit['findings'],
  [low, high]: readonly [Temperature, Temperature],
  at: (enteringFluid: Temperature) => FittedState,
): DerivedRatingPoints {
  const places = high - low < 0.1 ? [low] : [low, ((low + high) / 2) as Temperature, high];
  if (places.length === 1) refuseFew(1, 'at least two entering temperatures', 'the points have one entering fluid only');
  const derived = { code: 'rating-points-derived', level: 'note', values: { mode, derivedBy: 'scaled linear fit' }, source: 'leastSquares' } as const;
  return {
    derivedBy: 'scaled linear fit',
    ratingOrigin,
    points: places.map(at).map(({ enteringFluid, capacity, power }) => ({ enteringFluid, capacity, power })),
    findings: [derived, ...findings],
  };
}
