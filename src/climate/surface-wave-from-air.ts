import { InputError } from '../errors/index.js';
import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { DayOfYear, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { DAY, demandWave } from './limits.js';
import { SURFACE_COVER_NAMES, type SurfaceKnowledge, type SurfaceOffsets, surfaceOffsets, surfaceOffsetsShape } from './surface-offsets.js';
import { wrapDay } from './wave-at-depth.js';

/** What {@link surfaceWaveFromAir} needs. */
export interface SurfaceWaveFromAirInput extends SurfaceKnowledge {
  /** The wave of the air. */
  readonly air: AnnualWave;
}

/** Shape of {@link SurfaceWaveFromAirInput}. */
export const surfaceWaveFromAirInputShape: Shape<SurfaceWaveFromAirInput> = {
  air: annualWaveShape,
  cover: { optional: SURFACE_COVER_NAMES },
  meanOffset: { optional: 'temperature difference' },
  amplitudeRatio: { optional: 'ratio' },
  lag: { optional: 'time' },
};

/** The wave of the ground surface, the sides on which it may lie, and the offsets it rests on. */
export interface SurfaceWave {
  /** The likely wave of the ground surface. */
  readonly wave: AnnualWave;
  /** The unfavourable side for heating: cold mean and wide swing together. */
  readonly coldSide: AnnualWave;
  /** The unfavourable side for cooling: warm mean and wide swing together. */
  readonly warmSide: AnnualWave;
  /** The step from air to surface. */
  readonly offsets: SurfaceOffsets;
}

/** Shape of {@link SurfaceWave}. */
export const surfaceWaveShape: Shape<SurfaceWave> = {
  wave: annualWaveShape,
  coldSide: annualWaveShape,
  warmSide: annualWaveShape,
  offsets: surfaceOffsetsShape,
};

/**
 * The yearly wave of the ground surface from that of the air.
 *
 * Sun, shade, grass, snow and evaporation stand between the two. Without readings in the ground the step is assumed from the
 * cover, and so uncertain that its limits belong into the answer: by default the surface under grass is 0 to 2 K warmer on
 * average, swings 0.8 to 1.0 times as much and follows −1 to 7 days later.
 *
 * @param input - wave of the air, cover of the ground, and whichever of the offsets are known
 * @returns the wave of the surface, its unfavourable sides, and the offsets, marked where assumed
 * @throws InputError when a number is out of range or the wave is not of the air
 * @remarks
 * Sources: `soilTaxonomyMean` (about 1 K), `surfaceCoversPrague` (mean by cover), `climateReferenceNetwork` (two records fitted at
 * all depths); the middle values and limits are judgement. The sides stack two limits, so that they hold more sites than each alone.
 *
 * Invariants: given offsets are met exactly and leave no width; the year's length is kept.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference } = await import('../units/index.js');
 * const air = { of: 'air', mean: celsius(10), amplitude: kelvinDifference(14), coldestDay: dayOfYear(18), period: days(365) } as const;
 * const { wave, coldSide, offsets } = surfaceWaveFromAir({ air });
 * expect([wave.mean, wave.amplitude, wave.coldestDay]).toEqual([11, 12.6, 21]);
 * expect([coldSide.mean, coldSide.amplitude]).toEqual([10, 14]);
 * expect(offsets.assumed).toEqual(['meanOffset', 'amplitudeRatio', 'lag']);
 * ```
 */
export function surfaceWaveFromAir({ air, ...knowledge }: SurfaceWaveFromAirInput): SurfaceWave {
  demandWave('air', air);
  if (air.of !== 'air') {
    const hint = 'this wave is of the ground surface already';
    throw new InputError({ code: 'impossible', argument: 'air.of', value: air.of, allowed: 'air', hint });
  }
  const offsets = surfaceOffsets(knowledge);
  const { meanOffset, amplitudeRatio, lag } = offsets;
  const shifted = (offset: TemperatureDifference, ratio: number): AnnualWave => ({
    of: 'ground surface',
    mean: (air.mean + offset) as Temperature,
    amplitude: (air.amplitude * ratio) as TemperatureDifference,
    coldestDay: wrapDay(air.coldestDay + lag.estimate / DAY, air.period) as DayOfYear,
    period: air.period,
  });
  return {
    wave: shifted(meanOffset.estimate, amplitudeRatio.estimate),
    coldSide: shifted(meanOffset.low, amplitudeRatio.high),
    warmSide: shifted(meanOffset.high, amplitudeRatio.high),
    offsets,
  };
}
