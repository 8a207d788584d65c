import { demand, demandChoice } from '../errors/index.js';
import type { Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';
import type { WeatherBin } from './bin-run.js';
import { MONTHLY_MEAN } from './checks.js';
import { type Distribution, type Outdoor, shortfallBelow } from './shortfall.js';

/** What {@link closedFormBins} needs. */
export interface ClosedFormBinsInput {
  /** How temperatures lie about the mean: normal where the spread is known, logistic where `erbsSpread` told it. */
  readonly distribution: Distribution;
  /** Mean outdoor temperature of the month, −75 to 45 [degC]. */
  readonly meanOutdoor: Temperature;
  /** Standard deviation of hourly temperatures within the month, 0.1 to 50 [K]. */
  readonly spread: TemperatureDifference;
  /** Length of the month, an hour to a year [s]. */
  readonly time: Time;
  /** Width of a bin, 0.1 to 3 [K]. */
  readonly binWidth: TemperatureDifference;
  /** A temperature that one edge lies on, such as the balance point, −95 to 65; 0 °C when left out [degC]. */
  readonly edgeAt?: Temperature;
}

/** A bin between two edges; the first has none below and the last none above. */
export interface ClosedFormBin extends WeatherBin {
  /** Lower edge; absent in the first bin [degC]. */
  readonly lowerEdge?: Temperature;
  /** Upper edge; absent in the last bin [degC]. */
  readonly upperEdge?: Temperature;
}

/** Shape of {@link ClosedFormBinsInput}. */
export const closedFormBinsInputShape: Shape<ClosedFormBinsInput> = {
  distribution: ['normal', 'logistic'],
  meanOutdoor: 'temperature',
  spread: 'temperature difference',
  time: 'time',
  binWidth: 'temperature difference',
  edgeAt: { optional: 'temperature' },
};

/** Edges lie within so many standard deviations of the mean; beyond, one in thirty thousand hours, the bins are open. */
const REACH = 4;

/**
 * Bins of a month of which only mean and spread are known, each at the mean temperature within it.
 *
 * Real weather has another cold end: auxiliary heat by these bins is good to a quarter, as it is by {@link runFractions}. Where hours are at hand, use `weatherBins`.
 *
 * @param input - distribution, mean [degC], spread [K], length [s], width of a bin [K]
 * @returns bins from cold to warm, open at both ends [degC, s]
 * @throws InputError when a number is impossible
 * @remarks
 * Time in a bin = length · [F(upper) − F(lower)]; F is the normal distribution, or the logistic one of scale σ√3/π behind Erbs' form. The mean within a bin follows from the mean shortfall S:
 * Σ over the bin of T is [T F(T) − S(T)] from edge to edge. Sources: `schoenauKehrig1990`, `erbs1983`.
 *
 * Invariants: the times add up to the month, times and means to its mean; degree days to an edge are those of the closed form.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, days, kelvinDifference } = await import('../units/index.js');
 * const january = { meanOutdoor: celsius(-4), spread: kelvinDifference(6), time: days(31), binWidth: kelvinDifference(2) };
 * const bins = closedFormBins({ distribution: 'normal', ...january });
 * expect(bins.reduce((sum, { time }) => sum + days.of(time), 0)).toBeCloseTo(31, 9);
 * ```
 */
export function closedFormBins({
  distribution,
  meanOutdoor,
  spread,
  time,
  binWidth,
  edgeAt = 0 as Temperature,
}: ClosedFormBinsInput): readonly ClosedFormBin[] {
  demandChoice('distribution', distribution, ['normal', 'logistic']);
  demand('meanOutdoor', 'temperature', meanOutdoor, MONTHLY_MEAN);
  demand('spread', 'temperature difference', spread, { atLeast: 0.1, atMost: 50 });
  demand('time', 'time', time, { atLeast: 3600, atMost: 31_622_400 });
  demand('binWidth', 'temperature difference', binWidth, { atLeast: 0.1, atMost: 3 }, 'wider bins lose the cold end');
  demand('edgeAt', 'temperature', edgeAt, { atLeast: -95, atMost: 65 });
  const outdoor = { distribution, mean: meanOutdoor, spread };
  const edge = (place: number): number => edgeAt + place * binWidth;
  const first = Math.ceil((meanOutdoor - REACH * spread - edgeAt) / binWidth);
  const last = Math.floor((meanOutdoor + REACH * spread - edgeAt) / binWidth);
  const edges = Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => edge(first + index));
  return [undefined, ...edges].map((lower, index) => {
    const upper = edges[index];
    const [from, to] = [partBelow(outdoor, lower, -1), partBelow(outdoor, upper, 1)];
    const share = to.share - from.share;
    return {
      outdoor: ((to.sum - from.sum) / share) as Temperature,
      time: (share * time) as Time,
      ...(lower === undefined ? {} : { lowerEdge: lower as Temperature }),
      ...(upper === undefined ? {} : { upperEdge: upper as Temperature }),
    };
  });
}

/** Share of the time below an edge and the temperatures summed over it; without an edge none of it or all. */
function partBelow(outdoor: Outdoor, edge: number | undefined, side: -1 | 1): { readonly share: number; readonly sum: number } {
  if (edge === undefined) return side < 0 ? { share: 0, sum: 0 } : { share: 1, sum: outdoor.mean };
  const { mean, share } = shortfallBelow(outdoor, edge);
  return { share, sum: edge * share - mean };
}
