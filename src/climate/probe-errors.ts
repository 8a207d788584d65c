import { demand, demandCount, InputError } from '../errors/index.js';
import { type AnnualWave, annualWaveShape, joinedShape } from '../states/index.js';
import type { DayOfYear, Diffusivity, Length, Ratio, Shape, TemperatureDifference } from '../units/index.js';
import type { AnnualWaveErrors } from './annual-wave-fit.js';
import { fittedWave } from './fitted-wave.js';
import { diffusivitySlope, type HarmonicModel, modelColumns, type Place, sineOf } from './harmonic-model.js';
import { correlation, leastSquares, varianceOf } from './least-squares.js';
import { DAY, demandDay, demandDiffusivity, demandSurfaceWave } from './limits.js';
import { demandProbeDepth } from './probe-depths.js';
import { readingsTooFew } from './reading-demands.js';

/** The ground that is expected, and how well it is read. */
export interface ExpectedGround {
  /** The wave of the surface as far as it is known beforehand; only its size and season matter. */
  readonly wave: AnnualWave;
  /** Diffusivity that is expected, 1e-8 to 1e-5 [m2/s]. */
  readonly diffusivity: Diffusivity;
  /** Standard deviation of a reading about the mean year, 1e-3 to 20; the weather of the year is in it: 1 to 2 within the top metre, less below [K]. */
  readonly readingDeviation: TemperatureDifference;
  /** Whether the diffusivity is known from the soil and not to be fitted; fitted when left out. */
  readonly diffusivityKnown?: boolean;
  /** Whether the coldest day is known from the air and not to be fitted; fitted when left out. */
  readonly coldestDayKnown?: boolean;
}

/** What {@link probeErrors} needs. */
export interface ProbeErrorsInput extends ExpectedGround {
  /** Depths that are read on every day, 1 to 12 of them [m]. */
  readonly probeDepths: readonly Length[];
  /** Days on which they are read, 1 to 400 of them [d]. */
  readonly readingDays: readonly DayOfYear[];
}

/** Shape of {@link ExpectedGround}, for the interfaces that build on it. */
export const expectedGroundShape: Shape<ExpectedGround> = {
  wave: annualWaveShape,
  diffusivity: 'diffusivity',
  readingDeviation: 'temperature difference',
  diffusivityKnown: { optional: 'flag' },
  coldestDayKnown: { optional: 'flag' },
};

/** Shape of {@link ProbeErrorsInput}. */
export const probeErrorsInputShape: Shape<ProbeErrorsInput> = /* @__PURE__ */ joinedShape(expectedGroundShape, {
  probeDepths: { list: 'length' },
  readingDays: { list: 'day of year' },
});

/** What a probe will tell before it is read. */
export interface ProbeErrors {
  /** Standard errors of the wave to be expected. */
  readonly standardErrors: AnnualWaveErrors;
  /** Standard error of the diffusivity to be expected; 0 where it is known [m2/s]. */
  readonly diffusivityError: Diffusivity;
  /** Correlation of the errors of amplitude and diffusivity; 0 where the diffusivity is known [1]. */
  readonly amplitudeDiffusivityCorrelation: Ratio;
}

/** Shape of {@link ProbeErrors}. */
export const probeErrorsShape: Shape<ProbeErrors> = {
  standardErrors: { mean: 'temperature difference', amplitude: 'temperature difference', coldestDay: 'time' },
  diffusivityError: 'diffusivity',
  amplitudeDiffusivityCorrelation: 'ratio',
};

/** Refuses an expectation that cannot be. */
export function demandExpected({ wave, diffusivity, readingDeviation, diffusivityKnown, coldestDayKnown }: ExpectedGround): void {
  demandSurfaceWave(wave);
  const hint = 'a wave without amplitude tells neither a day nor a diffusivity';
  demand('wave.amplitude', 'temperature difference', wave.amplitude, { atLeast: 0.01 }, hint);
  demandDiffusivity(diffusivity);
  demand('readingDeviation', 'temperature difference', readingDeviation, { atLeast: 1e-3, atMost: 20 });
  demandFlag('diffusivityKnown', diffusivityKnown);
  demandFlag('coldestDayKnown', coldestDayKnown);
}

function demandFlag(argument: string, flag: boolean | undefined): void {
  if (flag === undefined || typeof flag === 'boolean') return;
  throw new InputError({ code: 'wrong-type', argument, value: String(flag), allowed: 'true or false' });
}

/** The errors to be expected; nothing when the design leaves something open. Kernel of the documented {@link probeErrors}. */
export function expectedErrors(ground: ExpectedGround, places: readonly Place[]): ProbeErrors | undefined {
  const { wave, diffusivity, readingDeviation, diffusivityKnown = false, coldestDayKnown = false } = ground;
  const turned = (2 * Math.PI * (wave.coldestDay - 1) * DAY) / wave.period;
  const model: HarmonicModel = { period: wave.period, harmonics: 1, coldestDay: coldestDayKnown ? wave.coldestDay : undefined };
  const sine = coldestDayKnown ? [wave.amplitude] : [-wave.amplitude * Math.cos(turned), -wave.amplitude * Math.sin(turned)];
  const coefficients = [wave.mean, ...sine];
  const slopes = diffusivityKnown ? [] : [Float64Array.from(places, diffusivitySlope(model, diffusivity, coefficients))];
  const columns = [...modelColumns(model, places, diffusivity), ...slopes];
  const design = places.length < columns.length ? undefined : leastSquares(columns, new Float64Array(places.length));
  if (design === undefined) return undefined;
  const { cofactors } = design;
  const errorOf = (gradient: readonly number[]): number => readingDeviation * Math.sqrt(varianceOf(gradient, cofactors));
  const ofDiffusivity = [...coefficients.map(() => 0), 1];
  const { amplitudeGradient } = sineOf(model, coefficients, 1);
  return {
    standardErrors: fittedWave(model, coefficients, errorOf).standardErrors,
    diffusivityError: (diffusivityKnown ? 0 : diffusivity * errorOf(ofDiffusivity)) as Diffusivity,
    amplitudeDiffusivityCorrelation: (diffusivityKnown ? 0 : correlation(amplitudeGradient, ofDiffusivity, cofactors)) as Ratio,
  };
}

/** Every depth on every day. */
export const placesOf = (depths: readonly number[], days: readonly number[]): readonly Place[] =>
  days.flatMap((day) => depths.map((depth) => ({ depth, day })));

/**
 * Standard errors that readings of a probe will have, before it is dug in.
 *
 * Fisher's information of the joint fit (`fitGroundProbe`), for readings that err independently of one another; those of neighbouring days do not,
 * so plan with readings a fortnight apart or more. The errors hold for the even ground and the wave that are expected.
 *
 * @param input - expected wave and diffusivity [m2/s], deviation of a reading [K], depths [m] and days [d] of the readings, and what is known
 * @returns standard errors of mean, amplitude [K], coldest day [s] and diffusivity [m2/s] to be expected
 * @throws InputError when a number is out of range, or when the readings would leave something open
 * @remarks
 * Source: `leastSquares`. Checked by Monte Carlo against fits of made readings. Invariants: errors go with the deviation of a reading; four times
 * the readings halve them; another depth or day never makes them larger.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference, metres, squareMetresPerDay } = await import('../units/index.js');
 * const wave = {
 *   of: 'ground surface', mean: celsius(11), amplitude: kelvinDifference(10.5), coldestDay: dayOfYear(33), period: days(365),
 * } as const;
 * const ground = { wave, diffusivity: squareMetresPerDay(0.055), readingDeviation: kelvinDifference(0.3) };
 * const readingDays = [21, 81, 141, 201, 261, 321].map((day) => dayOfYear(day));
 * const { standardErrors } = probeErrors({ ...ground, probeDepths: [metres(0.5), metres(1), metres(1.5)], readingDays });
 * expect(standardErrors.mean).toBeCloseTo(0.07, 2);
 * expect(standardErrors.amplitude).toBeCloseTo(0.27, 2);
 * ```
 */
export function probeErrors({ probeDepths, readingDays, ...ground }: ProbeErrorsInput): ProbeErrors {
  demandExpected(ground);
  demandCount('probeDepths', probeDepths, 1, 12);
  for (const [i, depth] of probeDepths.entries()) demandProbeDepth(`probeDepths.${String(i)}`, depth);
  demandCount('readingDays', readingDays, 1, 400);
  for (const [i, day] of readingDays.entries()) demandDay(`readingDays.${String(i)}`, day);
  const errors = expectedErrors(ground, placesOf(probeDepths, readingDays));
  const hint = 'a diffusivity takes two depths, a wave three days through the year';
  if (errors === undefined)
    throw readingsTooFew(probeDepths.length * readingDays.length, 'depths and days that tell all that is sought', hint, 'readingDays');
  return errors;
}
