import { demand, demandObject } from '../errors/index.js';
import type { ElectricPower, Fraction, Power, Shape, Temperature } from '../units/index.js';
import type { StagedUnit } from './staged-unit.js';

/** Between two neighbouring speeds: electricity of the straight line beside the least that the speeds around allow. */
export interface SpeedMixing {
  /** The upper of the two speeds, by its level, from 1. */
  readonly upperLevel: number;
  /** The load where line and least are farthest apart [W]. */
  readonly worstLoad: Power;
  /** Electric input there by the straight line, which is what the library takes [W]. */
  readonly mixedPower: ElectricPower;
  /** The least electric input there [W]. */
  readonly leastPower: ElectricPower;
  /** What the line takes too much at the most, as a share of itself [1]. */
  readonly mostOver: Fraction;
}

/** Shape of {@link SpeedMixing}. */
export const speedMixingShape: Shape<SpeedMixing> = {
  upperLevel: 'count',
  worstLoad: 'power',
  mixedPower: 'electric power',
  leastPower: 'electric power',
  mostOver: 'fraction',
};

/**
 * How much electricity the straight line between rated speeds can be too much, at one entering fluid.
 *
 * A compressor at more speed needs more electricity for each further watt, so its electric input over its capacity is convex: it lies below the line
 * between two speeds, and above the lines through the neighbouring speeds led on. Below the lowest speed the line from nothing serves as neighbour: the COP
 * between two speeds is no better than at the lower one. Between those two the truth must lie, whatever the compressor. A unit of two
 * stages, which switches, is on the line itself.
 *
 * @param unit - its levels
 * @param enteringFluid - within the range that all levels answer in [degC]
 * @param supplyTemperature - for models that ask for it, −50 to 150; may be left out for others [degC]
 * @returns one row between each two levels that the speeds around bound; none where they are themselves not convex
 * @throws InputError when a temperature is out of its range
 * @remarks Own derivation. Tested on compressors of known course between the speeds: the true electric input always lies between least and line.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts, ratio } = await import('../units/index.js');
 * const { performanceMap } = await import('./performance-map.js');
 * const { stagedUnit } = await import('./staged-unit.js');
 * const level = (capacity: number, cop: number) => performanceMap({ // invented
 *   mode: 'heating',
 *   points: [-5, 5].map((entering) => ({ enteringFluid: celsius(entering), capacity: kilowatts(capacity), cop: ratio(cop) })),
 * });
 * const unit = stagedUnit({ levels: [level(3, 4.5), level(6, 4.2), level(9, 3.6)], between: 'speeds' });
 * const rows = speedMixing(unit, celsius(0));
 * expect(rows.map(({ mostOver }) => Number(mostOver.toFixed(3)))).toEqual([0.058, 0.124]);
 * ```
 */
export function speedMixing(unit: StagedUnit, enteringFluid: Temperature, supplyTemperature?: Temperature): readonly SpeedMixing[] {
  demandObject('unit', unit);
  demandObject('unit.usable', unit.usable);
  const { lowest, highest } = unit.usable;
  demand('enteringFluid', 'temperature', enteringFluid, { atLeast: lowest, atMost: highest });
  if (supplyTemperature !== undefined) demand('supplyTemperature', 'temperature', supplyTemperature, { atLeast: -50, atMost: 150 });
  const speeds = unit.levels.map(({ model }): Place => model.continuedAt(enteringFluid, supplyTemperature ?? (Number.NaN as Temperature)));
  return speeds.slice(1).flatMap((upper, index): readonly SpeedMixing[] => {
    const lower = speeds[index] ?? NOTHING;
    const next = speeds[index + 2];
    const chord = slopeOf(lower, upper);
    // Led on from the speeds below, and back from those above; a line on the wrong side of the chord bounds nothing.
    const fromBelow = slopeOf(speeds[index - 1] ?? NOTHING, lower);
    const fromAbove = next && slopeOf(upper, next);
    const span = upper.capacity - lower.capacity;
    const below = fromBelow <= chord;
    const above = fromAbove !== undefined && fromAbove >= chord;
    if (!below && !above) return [];
    // Where the two meet they are farthest below the chord; one alone is so at its far end.
    const both = above && below && fromAbove > fromBelow;
    const along = both ? (span * (fromAbove - chord)) / (fromAbove - fromBelow) : below ? span : 0;
    const mixedPower = lower.power + chord * along;
    const leastPower = below ? lower.power + fromBelow * along : upper.power - (fromAbove ?? chord) * span;
    if (!(leastPower > 0)) return [];
    return [
      {
        upperLevel: index + 1,
        worstLoad: (lower.capacity + along) as Power,
        mixedPower: mixedPower as ElectricPower,
        leastPower: leastPower as ElectricPower,
        mostOver: (1 - leastPower / mixedPower) as Fraction,
      },
    ];
  });
}

interface Place {
  readonly capacity: number;
  readonly power: number;
}
const NOTHING: Place = { capacity: 0, power: 0 };
const slopeOf = (from: Place, to: Place): number => (to.power - from.power) / (to.capacity - from.capacity);
