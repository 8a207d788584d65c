import { demand, demandChoice, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import { demandSpread, MONTHLY_MEAN, OUTDOOR } from './checks.js';
import type { PeriodWeather } from './meter-readings.js';
import { type Shortfall, shortfallBelow } from './shortfall.js';

/** The weather of one period, ready to be asked for any base. */
export interface CountedWeather {
  /** Length of the period [s]. */
  readonly time: number;
  /** Mean of max(0, base − outdoor) and the share of time below the base. */
  readonly below: (base: number) => Shortfall;
  /** Bases between which it can be asked [degC]. */
  readonly lowest: number;
  readonly highest: number;
}

const LENGTH = { atLeast: 3600, atMost: 94_608_000 } as const;

/** Refuses a weather that cannot be, and makes it ready. */
export function countedWeather(weather: PeriodWeather): CountedWeather {
  demandObject('weather', weather);
  return locate('weather', () => {
    demandChoice('from', weather.from, ['temperatures', 'mean and spread', 'degree days']);
    switch (weather.from) {
      case 'temperatures':
        return ofTemperatures(weather);
      case 'mean and spread':
        return ofSpread(weather);
      case 'degree days':
        return ofDegreeDays(weather);
    }
  });
}

type Of<F extends PeriodWeather['from']> = Extract<PeriodWeather, { readonly from: F }>;

/** Sorted once with running sums, so that each base asked for costs a search by halves. */
function ofTemperatures({ outdoorTemperatures, step }: Of<'temperatures'>): CountedWeather {
  demandCount('outdoorTemperatures', outdoorTemperatures, 1, 1e5);
  outdoorTemperatures.forEach((each, index) => demand(`outdoorTemperatures.${String(index)}`, 'temperature', each, OUTDOOR));
  demand('step', 'time', step, { atLeast: 60, atMost: 86_400 }, 'seconds; an hour is 3600, a day 86400');
  const time = step * outdoorTemperatures.length;
  demand('step', 'time', time, LENGTH, 'all steps together make the period');
  const sorted = Float64Array.from(outdoorTemperatures).sort();
  const sums = new Float64Array(sorted.length + 1);
  for (const [index, each] of sorted.entries()) sums[index + 1] = (sums[index] ?? 0) + each;
  const below = (base: number): Shortfall => {
    let [count, end] = [0, sorted.length];
    while (count < end) {
      const middle = (count + end) >> 1;
      if ((sorted[middle] ?? base) < base) count = middle + 1;
      else end = middle;
    }
    return { mean: Math.max(0, count * base - (sums[count] ?? 0)) / sorted.length, share: count / sorted.length };
  };
  return { time, below, lowest: -Infinity, highest: Infinity };
}

function ofSpread({ time, meanOutdoor, spread }: Of<'mean and spread'>): CountedWeather {
  demand('time', 'time', time, LENGTH);
  demand('meanOutdoor', 'temperature', meanOutdoor, MONTHLY_MEAN);
  demandSpread('spread', spread);
  const below = (base: number): Shortfall => shortfallBelow({ distribution: 'normal', mean: meanOutdoor, spread }, base);
  return { time, below, lowest: -Infinity, highest: Infinity };
}

function ofDegreeDays({ time, onBases }: Of<'degree days'>): CountedWeather {
  demand('time', 'time', time, LENGTH);
  demandCount('onBases', onBases, 1, 100);
  const days = time / 86_400;
  const points = onBases.map((each, index) => {
    const at = `onBases.${String(index)}`;
    demandObject(at, each);
    const { base, degreeDays } = each;
    demand(`${at}.base`, 'temperature', base, OUTDOOR);
    demand(`${at}.degreeDays`, 'degree days', degreeDays, { atLeast: 0, atMost: 1e5 });
    return { base: Number(base), mean: degreeDays / days };
  });
  for (const [index, { base, mean }] of points.entries()) {
    const before = points[index - 1];
    // A kelvin of base adds a day for each day of the period at most; a hundredth is left to rounding of what is printed.
    if (before === undefined || (base > before.base && mean >= before.mean && mean - before.mean <= 1.01 * (base - before.base))) continue;
    throw new InputError({
      code: 'impossible',
      argument: `onBases.${String(index)}`,
      value: { kind: 'degree days', value: mean * days },
      allowed: 'a base above the one before, with no fewer degree days and at most one more for each day and kelvin',
    });
  }
  const below = (base: number): Shortfall => {
    const next = Math.max(
      1,
      points.findIndex((each) => each.base >= base),
    );
    const [left, right] = [points[next - 1], points[next]];
    if (left === undefined) return { mean: 0, share: 0 };
    if (right === undefined) return { mean: left.mean, share: 0 };
    const share = (right.mean - left.mean) / (right.base - left.base);
    return { mean: left.mean + share * (base - left.base), share };
  };
  return { time, below, lowest: points[0]?.base ?? -Infinity, highest: points.at(-1)?.base ?? Infinity };
}
