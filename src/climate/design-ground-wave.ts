import { demand, demandChoice } from '../errors/index.js';
import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { Ratio, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { WAVE_SHARES } from './design-season.data.js';
import { demandSurfaceWave } from './limits.js';
import { type Season, SEASONS } from './season-means.js';

/** What {@link designGroundWave} needs. */
export interface DesignGroundWaveInput {
  /** Whether a cold winter or a hot summer has been. */
  readonly season: Season;
  /** The usual wave of the ground surface. */
  readonly wave: AnnualWave;
  /** How much colder, or hotter, than usual the air was over three months, 0 to 30 [K]. */
  readonly departure: TemperatureDifference;
  /** How much of that reaches the surface, above 0 to 2; 0.9, as under grass, when left out [1]. */
  readonly amplitudeRatio?: Ratio;
}

/** Shape of {@link DesignGroundWaveInput}. */
export const designGroundWaveInputShape: Shape<DesignGroundWaveInput> = {
  season: SEASONS,
  wave: annualWaveShape,
  departure: 'temperature difference',
  amplitudeRatio: { optional: 'ratio' },
};

/** Share of the swing of the air that a surface under grass has; middle of the assumed offsets [1]. */
export const SURFACE_SHARE = 0.9;

/**
 * The wave of the ground surface whose lowest, or highest, temperatures at depth are those after one hard season.
 *
 * One season does not move the mean of a year by much, and dies away with depth faster than a wave of the year whose mean is lowered: 92 % of
 * the departure go into the amplitude, 9 % into the mean. Down to two damping depths the extreme of the year at depth is then met within 6 %
 * of the departure and missed to the mild side by no more than 4 %. The other season of this wave is further from the mean than usual too: use
 * it for the season that it is made for. Spells of days do not reach the pipes and are counted as part of the season only.
 *
 * @param input - season, usual wave, and how far the season departs from it [K]
 * @returns the wave of the ground surface to design with
 * @throws InputError when a number is out of range or the wave is of the air
 * @remarks
 * Source: `carslawJaeger1959`, the wave of a surface step, put on and taken off ninety days later; shares fitted to it here. Checked against a
 * finite-difference run of the heat equation.
 *
 * Invariants: no departure, no change; the surface itself goes further by the departure, within 1 %; coldest day and period are kept.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference } = await import('../units/index.js');
 * const wave = {
 *   of: 'ground surface', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(20), period: days(365),
 * } as const;
 * const cold = designGroundWave({ season: 'winter', wave, departure: kelvinDifference(3) });
 * expect(cold.mean).toBeCloseTo(9.757, 3);
 * expect(cold.amplitude).toBeCloseTo(14.484, 3);
 * ```
 */
export function designGroundWave({ season, wave, departure, amplitudeRatio = SURFACE_SHARE as Ratio }: DesignGroundWaveInput): AnnualWave {
  demandChoice('season', season, SEASONS);
  demandSurfaceWave(wave);
  demand('departure', 'temperature difference', departure, { atLeast: 0, atMost: 30 }, 'how far, not which way');
  demand('amplitudeRatio', 'ratio', amplitudeRatio, { above: 0, atMost: 2 });
  const atSurface = departure * amplitudeRatio;
  return {
    ...wave,
    mean: (wave.mean + (season === 'winter' ? -1 : 1) * WAVE_SHARES.mean * atSurface) as Temperature,
    amplitude: (wave.amplitude + WAVE_SHARES.amplitude * atSurface) as TemperatureDifference,
  };
}
