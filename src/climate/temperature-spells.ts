import { demand, demandChoice } from '../errors/index.js';
import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { DayOfYear, Diffusivity, Length, Shape, Temperature, Time } from '../units/index.js';
import { DAY, demandDepth, demandDiffusivity } from './limits.js';
import { demandSines, type SecondHarmonic, secondHarmonicShape } from './second-harmonic.js';
import { wrapDay } from './wave-at-depth.js';
import { crossing, yearCourse } from './year-course.js';

/** What {@link temperatureSpells} needs. */
export interface TemperatureSpellsInput {
  /** The wave of the ground surface. */
  readonly wave: AnnualWave;
  /** A second sine on top of the wave; none when left out. */
  readonly secondHarmonic?: SecondHarmonic;
  /** Thermal diffusivity of the ground, 1e-8 to 1e-5 [m2/s]. */
  readonly diffusivity: Diffusivity;
  /** Depth below the surface, 0 to 1e4 [m]. */
  readonly depth: Length;
  /** Whether the colder or the warmer part of the year is asked for. */
  readonly side: 'below' | 'above';
  /** The temperature that parts the year, −100 to 100 [degC]. */
  readonly temperature: Temperature;
}

/** Shape of {@link TemperatureSpellsInput}. */
export const temperatureSpellsInputShape: Shape<TemperatureSpellsInput> = {
  wave: annualWaveShape,
  secondHarmonic: { optional: secondHarmonicShape },
  diffusivity: 'diffusivity',
  depth: 'length',
  side: ['below', 'above'],
  temperature: 'temperature',
};

/** A part of the year on one side of a temperature. */
export interface TemperatureSpell {
  /** First moment of it, within the year [d]. */
  readonly start: DayOfYear;
  /** Last moment of it; counts on past the turn of the year, as the spans of `meanTemperatureOverTime` do [d]. */
  readonly end: DayOfYear;
}

/** When of the year the ground at a depth is colder, or warmer, than a temperature. */
export interface TemperatureSpells {
  /** The spells in the order of their starts: none, one, or two with a second harmonic; the whole year is one from 1 January. */
  readonly spells: readonly TemperatureSpell[];
  /** How long they last together, 0 to a year [s]. */
  readonly duration: Time;
}

/** Shape of {@link TemperatureSpells}. */
export const temperatureSpellsShape: Shape<TemperatureSpells> = { spells: { list: { start: 'day of year', end: 'day of year' } }, duration: 'time' };

/** Refuses a temperature that is asked about and that no ground comes near. */
export function demandThreshold(side: string, temperature: Temperature): void {
  demandChoice('side', side, ['below', 'above']);
  demand('temperature', 'temperature', temperature, { atLeast: -100, atMost: 100 }, 'degrees Celsius');
}

/**
 * When undisturbed ground at a depth is below, or above, a temperature: first day, last day, how long.
 *
 * Same assumptions as `groundTemperature`. A moment at which the temperature is only touched is no spell.
 *
 * @param input - wave of the ground surface, diffusivity [m2/s], depth [m], the side and the temperature that parts the year [degC]
 * @returns the spells with their first and last day [d], and their duration [s]
 * @throws InputError when a number is out of range or the wave is of the air
 * @remarks
 * Crossings between the turns of the course, which are where its slope passes zero; source: `carslawJaeger1959`. Checked against the closed
 * form of one sine and against a count of hours.
 *
 * Invariants: below and above share out the year; at both ends of a spell the ground has the temperature asked for.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference, metres, squareMetresPerDay } = await import('../units/index.js');
 * const wave = {
 *   of: 'ground surface', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(36), period: days(365),
 * } as const;
 * const soil = { wave, diffusivity: squareMetresPerDay(0.05), side: 'below', temperature: celsius(5) } as const;
 * const { spells, duration } = temperatureSpells({ ...soil, depth: metres(1.5) });
 * expect(spells.map(({ start, end }) => [Math.round(start), Math.round(end)])).toEqual([[33, 112]]);
 * expect(days.of(duration)).toBeCloseTo(79.2, 1);
 * expect(temperatureSpells({ ...soil, depth: metres(3) }).spells).toEqual([]);
 * ```
 */
export function temperatureSpells({ wave, secondHarmonic, diffusivity, depth, side, temperature }: TemperatureSpellsInput): TemperatureSpells {
  const sines = demandSines(wave, secondHarmonic);
  demandDiffusivity(diffusivity);
  demandDepth('depth', depth);
  demandThreshold(side, temperature);
  const { above, turns } = yearCourse(sines, diffusivity, depth);
  const sign = side === 'above' ? 1 : -1;
  /** How far the ground lies on the side asked for [K]. */
  const excess = (day: number): number => sign * (wave.mean + above(day) - temperature);
  const passages = turns.slice(1).flatMap((to, i) => {
    const from = turns[i] ?? to;
    const entering = excess(to) > 0;
    return excess(from) > 0 === entering ? [] : [{ day: crossing(excess, from, to), entering }];
  });
  const year = wave.period / DAY;
  if (passages.length === 0) {
    const spells = excess(turns[0] ?? 1) > 0 ? [{ start: 1, end: 1 + year } as TemperatureSpell] : [];
    return { spells, duration: (spells.length * wave.period) as Time };
  }
  const spells = passages
    .flatMap(({ day, entering }, i) => {
      if (!entering) return [];
      const leaving = passages[i + 1]?.day ?? (passages[0]?.day ?? day) + year;
      const start = wrapDay(day, wave.period);
      return [{ start, end: start + leaving - day } as TemperatureSpell];
    })
    .sort((a, b) => a.start - b.start);
  return { spells, duration: (spells.reduce((sum, { start, end }) => sum + end - start, 0) * DAY) as Time };
}
