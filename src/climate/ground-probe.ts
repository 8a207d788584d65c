import type { Finding } from '../findings/index.js';
import { type AnnualWave, annualWaveShape, type Band, bandShape, joinedShape } from '../states/index.js';
import type { DayOfYear, Diffusivity, Fraction, Length, Ratio, Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';
import type { AnnualWaveErrors } from './annual-wave-fit.js';
import { type SecondHarmonic, secondHarmonicShape } from './second-harmonic.js';

/** A place in the ground and a moment. */
export interface GroundMoment {
  /** Depth below the surface, 0 to 100 [m]. */
  readonly depth: Length;
  /** When; 1.0 is 1 January 00:00 of the first year, later years count on [d]. */
  readonly day: DayOfYear;
}

/** A temperature read in undisturbed ground. */
export interface GroundReading extends GroundMoment {
  /** The temperature, −90 to 90 [degC]. */
  readonly temperature: Temperature;
}

/** What {@link fitGroundProbe} needs. */
export interface GroundProbe {
  /** Readings at any depths and days, in any order; more than there are unknowns. */
  readonly readings: readonly GroundReading[];
  /** Diffusivity of the ground where it is known, from its soil; fitted when left out, 1e-8 to 1e-5 [m2/s]. */
  readonly diffusivity?: Diffusivity;
  /** Coldest day of the surface where it is known, from the air; fitted when left out [d]. */
  readonly coldestDay?: DayOfYear;
  /** Length of the year; 365 days when left out [s]. */
  readonly period?: Time;
  /** 1 for the yearly sine, 2 for a semi-annual one as well; 1 when left out. */
  readonly harmonics?: number;
  /** Probability that the limits are to hold; 0.95 when left out, 0.5 to 0.999 [1]. */
  readonly coverage?: Fraction;
  /** Where and when the temperature of the ground is wanted with its limits; one place at least, if any. */
  readonly wanted?: readonly GroundMoment[];
}

const momentShape = { depth: 'length', day: 'day of year' } as const;

/** Shape of {@link GroundProbe}. */
export const groundProbeShape: Shape<GroundProbe> = {
  readings: { list: /* @__PURE__ */ joinedShape(momentShape, { temperature: 'temperature' }) },
  diffusivity: { optional: 'diffusivity' },
  coldestDay: { optional: 'day of year' },
  period: { optional: 'time' },
  harmonics: { optional: 'count' },
  coverage: { optional: 'fraction' },
  wanted: { optional: { list: momentShape } },
};

/** How one depth agrees with the fit of all. */
export interface ProbeDepth {
  /** Depth below the surface [m]. */
  readonly depth: Length;
  /** How many readings were taken there. */
  readonly count: number;
  /** Mean of reading minus fit [K]. */
  readonly meanResidual: TemperatureDifference;
  /** Root mean square of reading minus fit [K]. */
  readonly rootMeanSquare: TemperatureDifference;
}

/** The ground at a wanted place and moment. */
export interface ProbeTemperature extends GroundMoment {
  /** Temperature of the fitted wave and the limits within which that wave lies; a single year strays further [degC]. */
  readonly temperatureBand: Band<'temperature'>;
  /** Standard error of the temperature [K]. */
  readonly temperatureError: TemperatureDifference;
}

/** The wave and the diffusivity that readings in the ground tell together. */
export interface GroundProbeFit {
  /** The wave of the ground surface. */
  readonly wave: AnnualWave;
  /** The semi-annual sine of the surface, where two harmonics were fitted. */
  readonly secondHarmonic?: SecondHarmonic;
  /** Diffusivity of the ground, fitted or as given [m2/s]. */
  readonly diffusivity: Diffusivity;
  /** Standard errors of the wave. */
  readonly standardErrors: AnnualWaveErrors;
  /** Standard error of the amplitude of the second harmonic, where one was fitted [K]. */
  readonly secondHarmonicError?: TemperatureDifference;
  /** Standard error of the diffusivity; 0 where it was given [m2/s]. */
  readonly diffusivityError: Diffusivity;
  /** Mean and its limits [degC]. */
  readonly meanBand: Band<'temperature'>;
  /** Amplitude and its limits, the lower one at least 0 [K]. */
  readonly amplitudeBand: Band<'temperature difference'>;
  /** Diffusivity and its limits, equally far in ratio [m2/s]. */
  readonly diffusivityBand: Band<'diffusivity'>;
  /** Correlation of the errors of amplitude and diffusivity, −1 to 1; 0 where the diffusivity was given [1]. */
  readonly amplitudeDiffusivityCorrelation: Ratio;
  /** Root mean square of what the fit leaves, over the readings less the parameters [K]. */
  readonly residualDeviation: TemperatureDifference;
  /** Independent pieces of information less the parameters fitted. */
  readonly degreesOfFreedom: number;
  /** Whether readings were taken together by months, or longer spans, for the errors, since those of neighbouring days err alike. */
  readonly errorsByMonth: boolean;
  /** How each depth agrees, from the shallowest down. */
  readonly byDepth: readonly ProbeDepth[];
  /** The ground where and when it was wanted. */
  readonly temperatures: readonly ProbeTemperature[];
}

/** A {@link GroundProbeFit} with its findings. */
export interface GroundProbeFitResult extends GroundProbeFit {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link GroundProbeFit}. */
export const groundProbeFitShape: Shape<GroundProbeFit> = {
  wave: annualWaveShape,
  secondHarmonic: { optional: secondHarmonicShape },
  diffusivity: 'diffusivity',
  standardErrors: { mean: 'temperature difference', amplitude: 'temperature difference', coldestDay: 'time' },
  secondHarmonicError: { optional: 'temperature difference' },
  diffusivityError: 'diffusivity',
  meanBand: /* @__PURE__ */ bandShape('temperature'),
  amplitudeBand: /* @__PURE__ */ bandShape('temperature difference'),
  diffusivityBand: /* @__PURE__ */ bandShape('diffusivity'),
  amplitudeDiffusivityCorrelation: 'ratio',
  residualDeviation: 'temperature difference',
  degreesOfFreedom: 'count',
  errorsByMonth: 'flag',
  byDepth: { list: { depth: 'length', count: 'count', meanResidual: 'temperature difference', rootMeanSquare: 'temperature difference' } },
  temperatures: {
    list: /* @__PURE__ */ joinedShape(momentShape, {
      temperatureBand: /* @__PURE__ */ bandShape('temperature'),
      temperatureError: 'temperature difference',
    }),
  },
};
