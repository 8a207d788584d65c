import { dampingDepth } from '../climate/index.js';
import type { Layout } from '../ground/index.js';
import type { AnnualWave, SoilThermal } from '../states/index.js';
import type { DayOfYear, Length, Shape, Temperature } from '../units/index.js';

/** Undisturbed ground where the pipes lie: the mean over all pipes of a trench, through the year. */
export interface GroundAtPipes {
  /** Mean depth of the pipes [m]. */
  readonly meanDepth: Length;
  /** Depth over which the yearly swing falls to 1/e [m]. */
  readonly dampingDepth: Length;
  /** Lowest of the year [degC]. */
  readonly lowest: Temperature;
  /** Day of the lowest [d]. */
  readonly coldestDay: DayOfYear;
  /** Highest of the year [degC]. */
  readonly highest: Temperature;
  /** Day of the highest [d]. */
  readonly warmestDay: DayOfYear;
  /** On a day of a year of that many days, those of the wave when left out [degC]. */
  readonly onDay: (day: number, yearDays?: number) => Temperature;
}

/** The ground surface in a usual year, and in one with a hard season, which is the usual one where none was asked for. */
export interface SurfaceWaves {
  readonly usual: AnnualWave;
  readonly afterWinter: AnnualWave;
  readonly afterSummer: AnnualWave;
}

/** Shape of the values of {@link GroundAtPipes}. */
export const groundAtPipesShape: Shape<Omit<GroundAtPipes, 'onDay'>> = {
  meanDepth: 'length',
  dampingDepth: 'length',
  lowest: 'temperature',
  coldestDay: 'day of year',
  highest: 'temperature',
  warmestDay: 'day of year',
};

/**
 * The ground temperature that the pipes of a trench see on the mean.
 *
 * The mean of waves at several depths is a wave again; its amplitude and lag are those of the sum of their phasors
 * e^(−z/D) · e^(−i z/D), a little under the wave at the mean depth in lag and over it in amplitude. A hard winter counts where it makes the
 * ground colder than usual, a hard summer where it makes it warmer; what either does to the other season is left out.
 *
 * @param surface - waves of the ground surface, alike in period and coldest day
 * @param soil - the soil above and around the pipes
 * @param layout - where the pipes lie
 * @returns extremes with their days, and the temperature on any day
 */
export function groundAtPipes({ usual, afterWinter, afterSummer }: SurfaceWaves, soil: SoilThermal, layout: Layout): GroundAtPipes {
  const damping = dampingDepth({ diffusivity: soil.diffusivity, period: usual.period });
  const { pipes } = layout;
  const mean = (of: (depth: Length) => number): number => pipes.reduce((sum, { depth }) => sum + of(depth), 0) / pipes.length;
  const real = mean((depth) => Math.exp(-depth / damping) * Math.cos(depth / damping));
  const imaginary = mean((depth) => Math.exp(-depth / damping) * Math.sin(depth / damping));
  const days = usual.period / 86_400;
  const around = (day: number): DayOfYear => (((((day - 1) % days) + days) % days) + 1) as DayOfYear;
  const lag = (Math.atan2(imaginary, real) / (2 * Math.PI)) * days;
  const coldestDay = around(usual.coldestDay + lag);
  const share = Math.hypot(real, imaginary);
  return {
    meanDepth: mean((depth) => depth) as Length,
    dampingDepth: damping,
    lowest: (afterWinter.mean - share * afterWinter.amplitude) as Temperature,
    coldestDay,
    highest: (afterSummer.mean + share * afterSummer.amplitude) as Temperature,
    warmestDay: around(coldestDay + days / 2),
    onDay: (day, yearDays = days) => {
      const wave = share * Math.cos((2 * Math.PI * (day - coldestDay)) / yearDays);
      const at = (surface: AnnualWave): number => surface.mean - surface.amplitude * wave;
      const [now, cold, warm] = [at(usual), at(afterWinter), at(afterSummer)];
      return (now + Math.min(0, cold - now) + Math.max(0, warm - now)) as Temperature;
    },
  };
}
