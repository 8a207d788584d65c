import { demand } from '../errors/index.js';
import type { Diffusivity, Fraction, Length, Ratio, Shape, TemperatureDifference, Time } from '../units/index.js';
import { DAY, demandDepth, demandDiffusivity, demandPart } from './limits.js';
import { studentT } from './student-t.js';
import { damping } from './wave-at-depth.js';

/** How far the surface strays from its yearly wave, by how long it does so; standard deviations of sines of 25, 150 and 1500 days. */
export interface SurfaceStraying {
  /** Weather, from days to weeks, 0 to 20 [K]. */
  readonly weatherStraying: TemperatureDifference;
  /** Mild and hard seasons, and where a season is not a sine, 0 to 20 [K]. */
  readonly seasonStraying: TemperatureDifference;
  /** Warm and cold years, 0 to 20 [K]. */
  readonly yearStraying: TemperatureDifference;
}

/** What {@link groundTemperatureSpread} needs. */
export interface GroundTemperatureSpreadInput {
  /** Depth below the surface, 0 to 1e4; measured between 0.05 and 1 m [m]. */
  readonly depth: Length;
  /** Time over which the temperature is averaged, one to 365 days [s]. */
  readonly averagingTime: Time;
  /** Share of all times that the allowance is to hold, 0.5 to 0.99; 0.8 when left out [1]. */
  readonly coverage?: Fraction;
  /** Thermal diffusivity of the ground, 1e-8 to 1e-5; 4.8e-7, as where the spread was measured, when left out [m2/s]. */
  readonly diffusivity?: Diffusivity;
  /** How far the surface strays; that of a continental station when left out. */
  readonly straying?: SurfaceStraying;
  /** Years that the wave and the straying are known from, 2 to 100; 7 when left out. */
  readonly years?: number;
}

/** Shape of {@link GroundTemperatureSpreadInput}. */
export const groundTemperatureSpreadInputShape: Shape<GroundTemperatureSpreadInput> = {
  depth: 'length',
  averagingTime: 'time',
  coverage: { optional: 'fraction' },
  diffusivity: { optional: 'diffusivity' },
  straying: {
    optional: { weatherStraying: 'temperature difference', seasonStraying: 'temperature difference', yearStraying: 'temperature difference' },
  },
  years: { optional: 'count' },
};

/** How far the ground strays from its yearly wave. */
export interface GroundTemperatureSpread {
  /** Standard deviation from the wave [K]. */
  readonly deviation: TemperatureDifference;
  /** How far to either side of the wave the stated share of all times lies, with the few years of the record allowed for [K]. */
  readonly allowance: TemperatureDifference;
  /** Allowance over deviation [1]. */
  readonly factor: Ratio;
  /** Of the deviation, what weather leaves at this depth [K]. */
  readonly weatherStraying: TemperatureDifference;
  /** What mild and hard seasons leave [K]. */
  readonly seasonStraying: TemperatureDifference;
  /** What warm and cold years leave [K]. */
  readonly yearStraying: TemperatureDifference;
}

/** Shape of {@link GroundTemperatureSpread}. */
export const groundTemperatureSpreadShape: Shape<GroundTemperatureSpread> = {
  deviation: 'temperature difference',
  allowance: 'temperature difference',
  factor: 'ratio',
  weatherStraying: 'temperature difference',
  seasonStraying: 'temperature difference',
  yearStraying: 'temperature difference',
};

/** Periods of the three sines that stand for weather, seasons and years: 25, 150 and 1500 days [s]. */
const PERIODS = { weatherStraying: 2_160_000, seasonStraying: 12_960_000, yearStraying: 129_600_000 } as const;

/** Straying of the surface at Manhattan, Kansas, seven years at five depths [K]. */
const MEASURED = { weatherStraying: 1.723, seasonStraying: 1.258, yearStraying: 0.998 } as const;

/** Diffusivity of that ground, by the fit through all depths [m2/s]. */
const MEASURED_DIFFUSIVITY = 4.82e-7 as Diffusivity;

/**
 * How far the undisturbed ground strays from its fitted yearly wave, by depth and averaging time.
 *
 * A wave through years of readings is the mean of them; weather, hard seasons and warm years lie beside it. Each is taken as a sine that dies away
 * with depth as the yearly wave does, the quick ones first, and that an average over time flattens. It is the spread about a wave fitted to readings
 * of the place; about a wave guessed from the air the error of the guess comes on top. The allowance is to both sides: the cold side alone is passed
 * half as often.
 *
 * @param input - depth [m], averaging time [s], and the share of times to hold
 * @returns standard deviation and allowance [K], and what they are made of
 * @throws InputError when a number is out of range
 * @remarks
 * σ² = Σ sᵢ² e^(−2z/Dᵢ) (sin xᵢ / xᵢ)², Dᵢ = √(αPᵢ/π), xᵢ = πτ/Pᵢ, nothing from x = π on; the allowance is Student's quantile of years − 1 times
 * √(1 + 1/years). Source: `climateReferenceNetwork`, `carslawJaeger1959`, `studentDistribution`. Calibrated on seven years of one station; with one year left
 * out at a time the allowances for 0.8 held 0.81 to 0.90 of it at 5 to 100 cm over 1 to 90 days, and were 1.02 to 1.31 times the least that would have.
 * One season of a well in Minnesota was held to 0.85 and more down to 2 m, to 0.73 at 2.5 m; a year with lasting snow to 0.92.
 *
 * Invariants: deeper or longer is never wider; the parts add up as squares; the allowance grows with the coverage and shrinks with the years.
 * @example
 * ```ts @import.meta.vitest
 * const { days, metres } = await import('../units/index.js');
 * const { deviation, allowance } = groundTemperatureSpread({ depth: metres(1), averagingTime: days(30) });
 * expect(deviation).toBeCloseTo(0.99, 2);
 * expect(allowance).toBeCloseTo(1.52, 2);
 * ```
 */
export function groundTemperatureSpread(input: GroundTemperatureSpreadInput): GroundTemperatureSpread {
  const { depth, averagingTime, coverage = 0.8, diffusivity = MEASURED_DIFFUSIVITY, straying = MEASURED, years = 7 } = input;
  demandDepth('depth', depth);
  demand('averagingTime', 'time', averagingTime, { atLeast: DAY, atMost: 365 * DAY }, 'seconds');
  demand('coverage', 'fraction', coverage, { atLeast: 0.5, atMost: 0.99 });
  demandDiffusivity(diffusivity);
  demandPart('straying', straying);
  for (const part of ['weatherStraying', 'seasonStraying', 'yearStraying'] as const) {
    demand(`straying.${part}`, 'temperature difference', straying[part], { atLeast: 0, atMost: 20 });
  }
  demand('years', 'count', years, { atLeast: 2, atMost: 100 });
  const left = (part: keyof SurfaceStraying): number =>
    straying[part] * Math.exp(-depth / damping(diffusivity, PERIODS[part])) * meanShare((Math.PI * averagingTime) / PERIODS[part]);
  const [weatherStraying, seasonStraying, yearStraying] = [left('weatherStraying'), left('seasonStraying'), left('yearStraying')];
  const deviation = Math.hypot(weatherStraying, seasonStraying, yearStraying);
  const factor = studentT(coverage, years - 1) * Math.sqrt(1 + 1 / years);
  return { deviation, allowance: factor * deviation, factor, weatherStraying, seasonStraying, yearStraying } as GroundTemperatureSpread;
}

/** Share of a sine's amplitude that is left in the mean over a part of its period; none over the whole and beyond. */
const meanShare = (half: number): number => (half >= Math.PI ? 0 : Math.sin(half) / half);
