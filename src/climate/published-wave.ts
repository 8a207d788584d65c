import { demand, demandChoice, InputError } from '../errors/index.js';
import type { AnnualWave } from '../states/index.js';
import type { DayOfYear, Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { demandAmplitude, demandMean, demandPart, demandPeriod, YEAR } from './limits.js';
import { lowestDay, type PublishedPhase, publishedPhaseShape } from './published-phase.js';

/** A wave as publications print it. */
export interface PublishedWave {
  /** Whether it is of the air or of the ground surface. */
  readonly of: AnnualWave['of'];
  /** Mean and amplitude, mean and whole swing, or the two extremes. */
  readonly swing:
    | {
        readonly by: 'amplitude';
        /** Mean over the year, −60 to 60 [degC]. */
        readonly mean: Temperature;
        /** Half of the swing, 0 to 60 [K]. Some publications call the whole swing amplitude. */
        readonly amplitude: TemperatureDifference;
      }
    | {
        readonly by: 'whole swing';
        /** Mean over the year, −60 to 60 [degC]. */
        readonly mean: Temperature;
        /** From the coldest to the warmest day, which is twice the amplitude, 0 to 120 [K]. */
        readonly wholeSwing: TemperatureDifference;
      }
    | {
        readonly by: 'extremes';
        /** On the coldest day, −60 to 60 [degC]. */
        readonly lowest: Temperature;
        /** On the warmest day, −60 to 60 [degC]. */
        readonly highest: Temperature;
      };
  /** When the wave is where. */
  readonly phase: PublishedPhase;
  /** Length of the year; 365 days when left out [s]. */
  readonly period?: Time;
}

/** Shape of {@link PublishedWave}. */
export const publishedWaveShape: Shape<PublishedWave> = {
  of: ['air', 'ground surface'],
  swing: {
    by: 'by',
    oneOf: {
      amplitude: { mean: 'temperature', amplitude: 'temperature difference' },
      'whole swing': { mean: 'temperature', wholeSwing: 'temperature difference' },
      extremes: { lowest: 'temperature', highest: 'temperature' },
    },
  },
  phase: publishedPhaseShape,
  period: { optional: 'time' },
};

/**
 * The wave from any of the forms in which it is published.
 *
 * Sine or cosine, counted from the coldest day, the warmest day or a passage of the mean, or with a phase, with the amplitude, the whole swing or
 * the two extremes: all are one wave. In the southern hemisphere the coldest day simply lies in July; the amplitude stays positive.
 *
 * @param published - swing, phase and length of the year
 * @returns the wave by its coldest day
 * @throws InputError when a number is out of range or the extremes are interchanged
 * @remarks
 * Sources: `kusudaAchenbach1965` (coldest day), `hillel1982` (sine, coldest day), `carslawJaeger1959` (cosine, warmest day), `patrignani`
 * (phase of a sine), `asceColdRegions1996` (whole swing called amplitude). Invariants: every form of one wave gives that wave;
 * `publishedForms` leads back.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, ratio } = await import('../units/index.js');
 * const swing = { by: 'extremes', lowest: celsius(0), highest: celsius(30) } as const;
 * const wave = annualWave({ of: 'ground surface', swing, phase: { marks: 'warmest', day: dayOfYear(193.5) } });
 * expect([wave.mean, wave.amplitude, wave.coldestDay]).toEqual([15, 15, 11]);
 * const turned = annualWave({ of: 'ground surface', swing, phase: { marks: 'sine phase', angle: ratio(Math.PI / 2) } });
 * expect(turned.coldestDay).toBeCloseTo(1);
 * ```
 */
export function annualWave({ of, swing, phase, period = YEAR }: PublishedWave): AnnualWave {
  demandChoice('of', of, ['air', 'ground surface']);
  demandPeriod('period', period);
  demandPart('swing', swing);
  return { of, ...levelsOf(swing), coldestDay: lowestDay(phase, period) as DayOfYear, period };
}

function levelsOf(swing: PublishedWave['swing']): Pick<AnnualWave, 'mean' | 'amplitude'> {
  demandChoice('swing.by', swing.by, ['amplitude', 'whole swing', 'extremes']);
  if (swing.by === 'amplitude') {
    demandMean('swing.mean', swing.mean);
    demandAmplitude('swing.amplitude', swing.amplitude);
    return { mean: swing.mean, amplitude: swing.amplitude };
  }
  if (swing.by === 'whole swing') {
    demandMean('swing.mean', swing.mean);
    demand('swing.wholeSwing', 'temperature difference', swing.wholeSwing, { atLeast: 0, atMost: 120 }, 'from the coldest to the warmest day');
    return { mean: swing.mean, amplitude: (swing.wholeSwing / 2) as TemperatureDifference };
  }
  const { lowest, highest } = swing;
  demandMean('swing.lowest', lowest);
  demandMean('swing.highest', highest);
  const mean = ((lowest + highest) / 2) as Temperature;
  const amplitude = ((highest - lowest) / 2) as TemperatureDifference;
  if (amplitude >= 0) return { mean, amplitude };
  const hint = 'the two extremes may be interchanged';
  throw new InputError({
    code: 'impossible',
    argument: 'swing.lowest',
    value: { kind: 'temperature', value: lowest },
    allowed: `at most the highest, ${String(highest)} degC`,
    hint,
  });
}
