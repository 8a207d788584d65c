import { demand, demandChoice, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { studentQuantile } from '../numerics/index.js';
import type { Fraction, Ratio, Temperature } from '../units/index.js';
import { carnotCop, type CarnotInput } from './cop.js';
import { carnotPoints } from './carnot-points.js';
import type { CarnotPointsInput, CarnotPrediction, CarnotShare, CarnotShareInput } from './carnot-share.js';
import type { DerivedRatingPoints } from './derived-points.js';

/** Below this lift Carnot's COP grows without bound and a share of it tells nothing [K]. */
const LEAST_LIFT = 10;
/** How far from the temperatures of the points a share is still worth a band; own judgement [K]. */
const FARTHEST = 20;
/** Share of the times that a further point lies within the band [1]. */
const COVERAGE = 0.9 as Fraction;
/** Shares that units have, between fluids and between evaporation and condensation; own judgement [1]. */
const USUAL = { fluids: { lowest: 0.35, highest: 0.6 }, refrigerant: { lowest: 0.45, highest: 0.75 } } as const;

/**
 * The share of Carnot's COP that a unit reaches at its rating points, and what it tells of other temperatures.
 *
 * For a unit with few points, mainly to step from one supply temperature to another. Between fluids, brine in and water out, the share is 0.45 to 0.55 for
 * current units; between evaporation and condensation it is higher. Units that heat air reach much less between fluid and air. It tells no capacity.
 *
 * @param input - which temperatures, and points with their COP in heating; see {@link CarnotShareInput}
 * @returns mean share, its spread, residuals, COP with a band elsewhere, rating points, and findings
 * @throws InputError for impossible points, a COP beyond Carnot's, or points so scattered that the band would hold shares no unit can have
 * @remarks
 * Band: mean share ± t · s · √(1 + 1/n), Student's t of n − 1 (`studentDistribution`). It holds the scatter of the points, not the drift of the share with the
 * lift; `carnot-share-extrapolated` says where that may show. Invariants: a unit of constant share is given back anywhere; the band holds the estimate.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, ratio } = await import('../units/index.js');
 * const share = fitCarnotShare({
 *   temperaturesOf: 'fluids',
 *   ratingOrigin: 'invented',
 *   points: [
 *     { cold: celsius(0), warm: celsius(35), cop: ratio(4.4) },
 *     { cold: celsius(0), warm: celsius(45), cop: ratio(3.5) },
 *     { cold: celsius(5), warm: celsius(35), cop: ratio(5) },
 *   ],
 * });
 * expect(share.carnotShare).toBeCloseTo(0.494, 3);
 * expect(share.copAt({ cold: celsius(0), warm: celsius(50) }).copBand.estimate).toBeCloseTo(3.19, 2);
 * ```
 */
export function fitCarnotShare({ temperaturesOf, ratingOrigin, points }: CarnotShareInput): CarnotShare {
  demandChoice('temperaturesOf', temperaturesOf, ['fluids', 'refrigerant']);
  demandChoice('ratingOrigin', ratingOrigin, ['maker', 'measured', 'estimated', 'invented']);
  demandCount('points', points, 2, 1000);
  const best = points.map((point, index) =>
    locate(`points.${String(index)}`, () => {
      demandObject('cop', point);
      const most = limitOf(point);
      demand('cop', 'ratio', point.cop, { atLeast: 1.05, atMost: most }, 'more than Carnot allows; cold and warm may belong to another row');
      return most;
    }),
  );
  const shares = points.map(({ cop }, index) => cop / (best[index] ?? Number.NaN));
  const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
  const deviation = Math.sqrt(shares.reduce((sum, share) => sum + (share - mean) ** 2, 0) / (shares.length - 1));
  const half = studentQuantile((1 + COVERAGE) / 2, shares.length - 1) * deviation * Math.sqrt(1 + 1 / shares.length);
  if (!(mean - half > 0 && mean + half < 1)) refuseScatter(mean, half);
  const copResiduals = points.map(({ cop }, index) => (cop - mean * (best[index] ?? Number.NaN)) as Ratio);
  const findings = unusual(temperaturesOf, mean);
  const range = rangesOf(points);
  const copAt = (between: CarnotInput): CarnotPrediction => {
    demandObject('between', between);
    demandNear('cold', between.cold, range.cold);
    demandNear('warm', between.warm, range.warm);
    const most = limitOf(between);
    const copBand = { low: (mean - half) * most, estimate: mean * most, high: (mean + half) * most, coverage: COVERAGE };
    return { copBand: copBand as CarnotPrediction['copBand'], findings: [...findings, ...extrapolated(between, range)] };
  };
  const ratingPoints = (wanted: CarnotPointsInput): DerivedRatingPoints => {
    demandObject('wanted', wanted);
    demandChoice('temperaturesOf', temperaturesOf, ['fluids']);
    demandNear('supplyTemperature', wanted.supplyTemperature, range.warm);
    return carnotPoints(wanted, copAt, ratingOrigin === 'invented' ? 'invented' : 'estimated');
  };
  return {
    temperaturesOf,
    carnotShare: mean as Fraction,
    shareDeviation: deviation as Fraction,
    copResiduals,
    worstError: Math.max(...copResiduals.map((residual, index) => Math.abs(residual) / (points[index]?.cop ?? Number.NaN))) as Fraction,
    findings,
    copAt,
    ratingPoints,
  };
}

/** Carnot's COP, refused for a lift too small for a share of it. */
function limitOf(between: CarnotInput): Ratio {
  const most = carnotCop(between);
  demand('warm', 'temperature', between.warm, { atLeast: between.cold + LEAST_LIFT }, 'the share of so small a lift tells nothing');
  return most;
}

interface Range {
  readonly low: number;
  readonly high: number;
}

const rangesOf = (points: readonly CarnotInput[]): { readonly cold: Range; readonly warm: Range } => {
  const range = (of: (point: CarnotInput) => number): Range => ({ low: Math.min(...points.map(of)), high: Math.max(...points.map(of)) });
  return { cold: range(({ cold }) => cold), warm: range(({ warm }) => warm) };
};

function demandNear(argument: string, value: Temperature, { low, high }: Range): void {
  demand(argument, 'temperature', value, { atLeast: low - FARTHEST, atMost: high + FARTHEST }, 'too far from the points for their share to hold');
}

const outside = (value: number, { low, high }: Range): boolean => value < low - 2 || value > high + 2;

function extrapolated({ cold, warm }: CarnotInput, range: ReturnType<typeof rangesOf>): readonly Finding[] {
  if (!outside(cold, range.cold) && !outside(warm, range.warm)) return [];
  return [{ code: 'carnot-share-extrapolated', level: 'warning', values: { cold, warm }, source: 'common practice' }];
}

function unusual(temperaturesOf: CarnotShareInput['temperaturesOf'], share: number): readonly Finding[] {
  const { lowest, highest } = USUAL[temperaturesOf];
  if (share >= lowest && share <= highest) return [];
  const values = { share: share as Fraction, least: lowest as Fraction, most: highest as Fraction };
  return [{ code: 'carnot-share-unusual', level: 'warning', values, source: 'common practice' }];
}

function refuseScatter(mean: number, half: number): never {
  throw new InputError({
    code: 'impossible',
    argument: 'points',
    value: `shares of Carnot's COP of ${mean.toPrecision(3)}, with a band of ${half.toPrecision(3)} to either side`,
    allowed: 'points that agree well enough for a band between 0 and 1',
    hint: 'give more points of the same unit; two that differ tell little of a third',
  });
}
