import { demand } from '../errors/index.js';
import type { Temperature, TemperatureDifference, Time } from '../units/index.js';
import { type AirReadings, demandReadings } from './air-readings.js';
import { demandMean } from './limits.js';

/** What {@link temperatureBins} needs. */
export interface TemperatureBinsInput extends AirReadings {
  /** Width of a bin, 0.2 to 20 [K]. */
  readonly binWidth: TemperatureDifference;
  /** A temperature on which one edge lies, −60 to 60; 0 °C when left out. Bins of 5 °F lie on 0 °F [degC]. */
  readonly anchor?: Temperature;
}

/** Time that the air spends in a narrow range. */
export interface TemperatureBin {
  /** Lower edge, within the bin [degC]. */
  readonly lowerEdge: Temperature;
  /** Upper edge, within the next bin [degC]. */
  readonly upperEdge: Temperature;
  /** Mean temperature of the time in the bin [degC]. */
  readonly outdoor: Temperature;
  /** Time in the bin [s]. */
  readonly time: Time;
}

/**
 * How long the air spends in each range of temperature, coldest first; ranges without any time are left out.
 *
 * @param input - temperatures [degC], the length of their step [s], width of the bins [K], where an edge lies [degC]
 * @returns edges and mean temperature of each bin [degC], and the time in it [s]
 * @throws InputError when a number is impossible
 * @remarks
 * Bins forget when the air was cold. Their mean temperature, better than their middle, makes `binRun` of the room `building` exact for a load
 * that is a straight line over the bin. Source: `common practice`.
 *
 * Invariants: the times add up to all of the time given, times and means together to its mean; every mean lies within its edges.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, hours, kelvinDifference } = await import('../units/index.js');
 * const temperatures = [-1, 0, 1, 4].map((t) => celsius(t));
 * const bins = temperatureBins({ temperatures, step: hours(1), binWidth: kelvinDifference(2) });
 * expect(bins.map(({ lowerEdge, outdoor }) => [lowerEdge, outdoor])).toEqual([[-2, -1], [0, 0.5], [4, 4]]);
 * ```
 */
export function temperatureBins({ binWidth, anchor = 0 as Temperature, ...readings }: TemperatureBinsInput): readonly TemperatureBin[] {
  demandReadings(readings);
  demand('binWidth', 'temperature difference', binWidth, { atLeast: 0.2, atMost: 20 });
  demandMean('anchor', anchor);
  const bins = new Map<number, { steps: number; sum: number }>();
  for (const temperature of readings.temperatures) {
    const place = placeOf(temperature, anchor, binWidth);
    const { steps, sum } = bins.get(place) ?? { steps: 0, sum: 0 };
    bins.set(place, { steps: steps + 1, sum: sum + temperature });
  }
  return [...bins]
    .sort(([a], [b]) => a - b)
    .map(([place, { steps, sum }]) => ({
      lowerEdge: (anchor + place * binWidth) as Temperature,
      upperEdge: (anchor + (place + 1) * binWidth) as Temperature,
      outdoor: (sum / steps) as Temperature,
      time: (steps * readings.step) as Time,
    }));
}

/** Which bin a temperature lies in; one on an edge lies above it, also where the edge came about by rounding. */
function placeOf(temperature: number, anchor: number, width: number): number {
  return Math.floor((temperature - anchor) / width + 1e-9);
}
