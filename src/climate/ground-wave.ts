import { demandChoice } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { Shape } from '../units/index.js';
import { type AnnualWaveFit, annualWaveFitShape } from './annual-wave-fit.js';
import { coldWinterFinding, offsetFindings, surfaceFindings } from './climate-findings.js';
import type { ClimateInput, WaveNumbers } from './climate-input.js';
import { fitAnnualWave } from './fit-annual-wave.js';
import { demandAmplitude, demandColdestDay, demandMean, demandPeriod, YEAR } from './limits.js';
import { type SurfaceKnowledge, type SurfaceOffsets, surfaceOffsetsShape } from './surface-offsets.js';
import { surfaceWaveFromAir } from './surface-wave-from-air.js';

/** The wave of the ground surface that a loop is designed with, and what it rests on. */
export interface GroundWave {
  /** The likely wave of the ground surface. */
  readonly wave: AnnualWave;
  /** The unfavourable side for heating; the wave itself where that was given. */
  readonly coldSide: AnnualWave;
  /** The unfavourable side for cooling; the wave itself where that was given. */
  readonly warmSide: AnnualWave;
  /** The wave of the air, where the surface was derived from it. */
  readonly air?: AnnualWave;
  /** The step from air to surface, where there was one; says which parts are assumed. */
  readonly offsets?: SurfaceOffsets;
  /** The fit through monthly means, where there was one. */
  readonly fit?: AnnualWaveFit;
}

/** A {@link GroundWave} with its findings. */
export interface GroundWaveResult extends GroundWave {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link GroundWave}. */
export const groundWaveShape: Shape<GroundWave> = {
  wave: annualWaveShape,
  coldSide: annualWaveShape,
  warmSide: annualWaveShape,
  air: { optional: annualWaveShape },
  offsets: { optional: surfaceOffsetsShape },
  fit: { optional: annualWaveFitShape },
};

/**
 * The yearly wave of the ground surface from whatever is known of the climate.
 *
 * @param input - a wave of the ground surface, a wave of the air, or twelve monthly means of the air
 * @returns the wave, its unfavourable sides, the steps on the way, and findings
 * @throws InputError when a number is impossible or absent
 * @remarks
 * All three ways describe a usual year; the finding `no-cold-winter-used` says so until a cold one is asked for.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('../units/index.js');
 * const monthlyMeans = [2.4, 4.8, 9.6, 14, 18.8, 23, 25.7, 25.1, 20.1, 16.1, 9.5, 3.7].map((mean) => celsius(mean));
 * const { wave, air, findings } = groundWave({ from: 'monthly-air', monthlyMeans });
 * expect(wave.of).toBe('ground surface');
 * expect(wave.mean - (air?.mean ?? 0)).toBeCloseTo(1);
 * expect(findings.map(({ code }) => code)).toEqual(['surface-offsets-assumed', 'no-cold-winter-used']);
 * ```
 */
export function groundWave(input: ClimateInput): GroundWaveResult {
  demandChoice('from', input.from, ['wave', 'air-wave', 'monthly-air']);
  switch (input.from) {
    case 'wave': {
      const wave = waveOf('ground surface', input);
      return { wave, coldSide: wave, warmSide: wave, findings: [...surfaceFindings(wave), coldWinterFinding()] };
    }
    case 'air-wave':
      return throughAir(input, waveOf('air', input), []);
    case 'monthly-air': {
      const { findings, ...fit } = fitAnnualWave({ of: 'air', monthlyMeans: input.monthlyMeans });
      return { ...throughAir(input, fit.wave, findings), fit };
    }
  }
}

function throughAir(knowledge: SurfaceKnowledge, air: AnnualWave, fitFindings: readonly Finding[]): GroundWaveResult {
  const surface = surfaceWaveFromAir({ ...knowledge, air });
  const findings = [...fitFindings, ...surfaceFindings(surface.wave), ...offsetFindings(surface.offsets), coldWinterFinding()];
  return { ...surface, air, findings };
}

function waveOf(of: AnnualWave['of'], { mean, amplitude, coldestDay, period = YEAR }: WaveNumbers): AnnualWave {
  demandMean('mean', mean);
  demandAmplitude('amplitude', amplitude);
  demandColdestDay('coldestDay', coldestDay);
  demandPeriod('period', period);
  return { of, mean, amplitude, coldestDay, period };
}
