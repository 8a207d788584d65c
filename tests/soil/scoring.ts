import type { Band } from '../../src/states/index.js';

/** Limits of a band of the conductivity, as logarithms. */
export type Limits = readonly [low: number, high: number];

/** A value of the logarithm that a band should hold, the site it is from, and how much it counts. */
export interface Trial {
  readonly limits: Limits;
  readonly value: number;
  readonly site: string;
  readonly weight: number;
}

export const logLimits = ({ low, high }: Band<'conductivity'>): Limits => [Math.log(low), Math.log(high)];

/** 1 − coverage of the bands. */
const MISSED = 0.2;

/** Interval score of Gneiting and Raftery (2007): width, and for a miss its distance times two over the share that may be missed. Less is better. */
export function intervalScore([low, high]: Limits, value: number): number {
  return high - low + (2 / MISSED) * Math.max(0, low - value, value - high);
}

const weighted = (trials: readonly Trial[], of: (trial: Trial) => number): number =>
  trials.reduce((sum, trial) => sum + trial.weight * of(trial), 0) / trials.reduce((sum, { weight }) => sum + weight, 0);

export const meanScore = (trials: readonly Trial[]): number => weighted(trials, ({ limits, value }) => intervalScore(limits, value));
export const coverage = (trials: readonly Trial[]): number =>
  weighted(trials, ({ limits: [low, high], value }) => (value >= low && value <= high ? 1 : 0));

/** Wilson's interval of 95 % for a share of so many. */
export function wilson(held: number, of: number): readonly [low: number, high: number] {
  const z = 1.959964;
  const share = held / of;
  const middle = (share + z ** 2 / (2 * of)) / (1 + z ** 2 / of);
  const half = (z / (1 + z ** 2 / of)) * Math.sqrt((share * (1 - share)) / of + (z / (2 * of)) ** 2);
  return [middle - half, middle + half];
}

/** Uniform numbers from 0 to 1 by a multiplicative generator, the same at every run. */
function uniforms(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/** Middle 95 % of a statistic when whole sites are drawn again with replacement, 2000 times. */
export function bootstrapOfSites<T extends { readonly site: string }>(
  items: readonly T[],
  statistic: (drawn: readonly T[]) => number,
): readonly [low: number, high: number] {
  const sites = [...new Set(items.map(({ site }) => site))];
  const bySite = new Map(sites.map((site) => [site, items.filter((item) => item.site === site)]));
  const uniform = uniforms(20_261_125);
  const draw = (): readonly T[] => sites.flatMap(() => bySite.get(sites[Math.floor(uniform() * sites.length)] ?? '') ?? []);
  const found = Array.from({ length: 2000 }, () => statistic(draw())).sort((a, b) => a - b);
  return [found[50] ?? NaN, found[1949] ?? NaN];
}
