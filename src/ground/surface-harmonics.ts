import { demand, demandChoice, demandObject, locate } from '../errors/index.js';
import { type Complex, times } from '../numerics/index.js';
import type { AnnualWave } from '../states/index.js';
import type { DayOfYear, Shape, Temperature, TemperatureDifference } from '../units/index.js';

/** What bends the yearly wave of the ground surface, half a year long. */
export interface SurfaceHarmonic {
  /** half of its swing, 0 to 60 [K]. */
  readonly amplitude: TemperatureDifference;
  /** The first day of the year on which it is coldest [d]. */
  readonly coldestDay: DayOfYear;
}

/** Shape of {@link SurfaceHarmonic}. */
export const surfaceHarmonicShape: Shape<SurfaceHarmonic> = { amplitude: 'temperature difference', coldestDay: 'day of year' };

/** The wave of a ground surface. */
export interface SurfaceWaves {
  readonly wave: AnnualWave;
  readonly secondHarmonic?: SurfaceHarmonic;
}

/** Undisturbed ground somewhere, or a mean of places: its yearly wave, and the temperature with the half-yearly one counted in. */
export interface UndisturbedWave {
  /** Mean over the year [degC]. */
  readonly mean: Temperature;
  /** Half of the swing of the yearly wave [K]. */
  readonly amplitude: TemperatureDifference;
  /** Day on which the yearly wave is lowest [d]. */
  readonly coldestDay: DayOfYear;
  /**
   * Temperature on a day of the year [degC].
   *
   * @param day - 1.0 is 1 January 00:00, any finite number [d]
   */
  readonly temperatureOn: (day: DayOfYear) => Temperature;
}

const DAY = 86_400;

/** Refuses a wave that is none, or not of the ground surface. */
export function demandSurfaceWaves({ wave, secondHarmonic }: SurfaceWaves): void {
  demandObject('wave', wave);
  locate('wave', () => {
    demandChoice('of', wave.of, ['ground surface']);
    demand('mean', 'temperature', wave.mean, { atLeast: -60, atMost: 60 });
    demandSwing(wave);
    demand('period', 'time', wave.period, { atLeast: 360 * DAY, atMost: 370 * DAY });
  });
  if (secondHarmonic === undefined) return;
  demandObject('secondHarmonic', secondHarmonic);
  locate('secondHarmonic', () => {
    demandSwing(secondHarmonic);
  });
}

function demandSwing({ amplitude, coldestDay }: SurfaceHarmonic): void {
  demand('amplitude', 'temperature difference', amplitude, { atLeast: 0, atMost: 60 });
  demand('coldestDay', 'day of year', coldestDay, { atLeast: 1, atMost: 367 });
}

/** What is left of a wave of the surface at a depth [m]: exp(−√(iω/α) · depth), by √(ω/2α) [1/m]. */
export function leftAt(depth: number, part: number): Complex {
  const size = Math.exp(-part * depth);
  return { re: size * Math.cos(part * depth), im: -size * Math.sin(part * depth) };
}

/** √(ω/2α) of the nth harmonic of a year [1/m]. */
export function partOf(n: number, period: number, diffusivity: number): number {
  return Math.sqrt((n * Math.PI) / (period * diffusivity));
}

/** A wave of which so much is left, of the yearly and of the half-yearly one. */
export function undisturbedWave({ wave, secondHarmonic }: SurfaceWaves, first: Complex, second: Complex): UndisturbedWave {
  const { mean, period, amplitude, coldestDay } = wave;
  const turn = (2 * Math.PI * DAY) / period;
  const fall = (of: SurfaceHarmonic, n: number, left: Complex, day: number): number => {
    const angle = n * turn * (day - of.coldestDay);
    return of.amplitude * times(left, { re: Math.cos(angle), im: Math.sin(angle) }).re;
  };
  const days = period / DAY;
  const late = coldestDay - Math.atan2(first.im, first.re) / turn - 1;
  return {
    mean,
    amplitude: (amplitude * Math.hypot(first.re, first.im)) as TemperatureDifference,
    coldestDay: (1 + late - days * Math.floor(late / days)) as DayOfYear,
    temperatureOn: (day) => {
      demand('day', 'day of year', day, { atLeast: -1e6, atMost: 1e6 });
      const bent = secondHarmonic === undefined ? 0 : fall(secondHarmonic, 2, second, day);
      return (mean - fall(wave, 1, first, day) - bent) as Temperature;
    },
  };
}
