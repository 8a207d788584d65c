import { demand, demandChoice, InputError } from '../errors/index.js';
import type { AnnualWave } from '../states/index.js';
import type { Diffusivity, Length, Temperature, TemperatureDifference, Time } from '../units/index.js';

/** Seconds in a day. */
export const DAY = 86_400;

/** A year of 8760 hours [s]. */
export const YEAR: Time = 31_536_000 as Time;

/** Refuses a part of an input that is absent or no object, so that its fields can be looked at. */
export function demandPart(argument: string, part: object): void {
  if (typeof part === 'object' && part !== null) return;
  throw new InputError({
    code: part === undefined || part === null ? 'missing' : 'wrong-type',
    argument,
    value: part === undefined || part === null ? undefined : String(part),
    allowed: 'an object with its fields',
  });
}

/** Refuses a day that is no number or further from the year than any study runs. */
export function demandDay(argument: string, day: number): void {
  demand(argument, 'day of year', day, { atLeast: -1e6, atMost: 1e6 }, '1.0 is 1 January 00:00');
}

/** Refuses a mean of a year, or of its coldest or warmest day, that no place on earth has. */
export function demandMean(argument: string, mean: Temperature): void {
  demand(argument, 'temperature', mean, { atLeast: -60, atMost: 60 }, 'degrees Celsius; was it given in Fahrenheit?');
}

/** Refuses an amplitude that is negative or larger than that of any place on earth. */
export function demandAmplitude(argument: string, amplitude: TemperatureDifference): void {
  const hint = 'half of the difference between warmest and coldest day; the sign lies in the coldest day, not here';
  demand(argument, 'temperature difference', amplitude, { atLeast: 0, atMost: 60 }, hint);
}

/** Refuses a coldest day outside the year. */
export function demandColdestDay(argument: string, day: number): void {
  demand(argument, 'day of year', day, { atLeast: 1, atMost: 367 }, '1.0 is 1 January 00:00');
}

/** Refuses a period below an hour, the mark of days given as seconds, or above three centuries. */
export function demandPeriod(argument: string, period: Time): void {
  demand(argument, 'time', period, { atLeast: 3600, atMost: 1e10 }, `seconds; a year of 365 days is ${String(YEAR)}`);
}

/** Refuses a diffusivity that no ground has; the usual cause is another unit of area or time. */
export function demandDiffusivity(diffusivity: Diffusivity): void {
  const hint = 'm2/s; soils and rocks lie between 1e-7 and 3e-6; was it given per hour or per day?';
  demand('diffusivity', 'diffusivity', diffusivity, { atLeast: 1e-8, atMost: 1e-5 }, hint);
}

/** Refuses a depth above the surface or below any loop. */
export function demandDepth(argument: string, depth: Length): void {
  demand(argument, 'length', depth, { atLeast: 0, atMost: 10_000 }, 'counted downwards from the surface');
}

/** Refuses an impossible wave. */
export function demandWave(argument: string, wave: AnnualWave): void {
  demandPart(argument, wave);
  demandChoice(`${argument}.of`, wave.of, ['air', 'ground surface']);
  demandMean(`${argument}.mean`, wave.mean);
  demandAmplitude(`${argument}.amplitude`, wave.amplitude);
  demandColdestDay(`${argument}.coldestDay`, wave.coldestDay);
  demandPeriod(`${argument}.period`, wave.period);
}

/** Refuses an impossible wave, and one of the air where the ground surface is needed. */
export function demandSurfaceWave(wave: AnnualWave): void {
  demandWave('wave', wave);
  if (wave.of === 'ground surface') return;
  throw new InputError({
    code: 'impossible',
    argument: 'wave.of',
    value: wave.of,
    allowed: 'ground surface',
    hint: 'the ground surface is warmer than the air and swings less; turn the wave of the air into that of the surface with surfaceWaveFromAir',
  });
}
