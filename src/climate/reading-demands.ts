import { demand, demandCount, InputError } from '../errors/index.js';
import type { Temperature } from '../units/index.js';
import { DAY, demandDay, demandPart } from './limits.js';

/** Refuses readings that are no list, too few, or impossible by themselves. */
export function demandReadings(readings: readonly { readonly day: number; readonly temperature: Temperature }[], least: number): void {
  demandCount('readings', readings, least);
  for (const [i, reading] of readings.entries()) {
    const place = `readings.${String(i)}`;
    demandPart(place, reading);
    demandDay(`${place}.day`, reading.day);
    const hint = 'degrees Celsius; was it given in Fahrenheit?';
    demand(`${place}.temperature`, 'temperature', reading.temperature, { atLeast: -90, atMost: 90 }, hint);
  }
}

/** Refuses another number of harmonics than one or two. */
export function demandHarmonics(harmonics: number): void {
  demand('harmonics', 'count', harmonics, { atLeast: 1, atMost: 2 });
}

/** The refusal of readings that leave what is sought open. */
export function readingsTooFew(count: number, allowed: string, hint: string, argument = 'readings'): InputError {
  return new InputError({ code: 'too-few', argument, value: { kind: 'count', value: count }, allowed, hint });
}

/** Longest part of the year in which no reading lies, whichever year they are of [s]. */
export function longestGap(days: readonly number[], period: number): number {
  const year = period / DAY;
  const phases = days.map((day) => (((day - 1) % year) + year) % year).sort((a, b) => a - b);
  const first = phases[0] ?? 0;
  return Math.max(...[...phases.slice(1), first + year].map((phase, i) => phase - (phases[i] ?? phase))) * DAY;
}
