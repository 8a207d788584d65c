import { demand, demandChoice, demandCount, demandObject, InputError } from '../errors/index.js';
import { MONTH_DAYS } from '../states/index.js';
import type { Temperature, TemperatureDifference, Time } from '../units/index.js';
import type { WeatherBin } from './bin-run.js';
import { OUTDOOR } from './checks.js';

/** The part of a day that counts as day; the rest is night. */
export interface DayHours {
  /** When it begins, after midnight, 0 to a day [s]. */
  readonly dayBegins: Time;
  /** When it ends, later than it begins, up to a day [s]. */
  readonly dayEnds: Time;
}

/** What {@link weatherBins} needs. */
export interface WeatherBinsInput {
  /** Mean outdoor temperature of each step, 1 to 1e6 of them, from a midnight on, each −95 to 65 [degC]. */
  readonly temperatures: Float64Array | readonly Temperature[];
  /** Length of a step, 60 s to an hour, a whole part of a day [s]. */
  readonly step: Time;
  /** Width of a bin, 0.1 to 3 [K]. */
  readonly binWidth: TemperatureDifference;
  /** Temperatures that no bin may straddle, such as balance points, up to 10 of them; none when left out [degC]. */
  readonly splitAt?: readonly Temperature[];
  /** What to part the bins by; `nothing` when left out. Months want the 365 days of a year from 1 January on. */
  readonly by?: 'nothing' | 'month';
  /** Parts the bins by day and night; undivided when left out. */
  readonly dayHours?: DayHours;
}

/** A bin with what it was parted by. */
export interface PartedBin extends WeatherBin {
  /** Lower edge, within the bin [degC]. */
  readonly lowerEdge: Temperature;
  /** Upper edge, within the next bin [degC]. */
  readonly upperEdge: Temperature;
  /** The month, 1 to 12; absent where bins are not parted by months. */
  readonly month?: number;
  /** Day or night; absent where bins are not parted by them. */
  readonly dayPart?: 'day' | 'night';
}

const DAY = 86_400;
/** Edges lie on whole numbers of widths from 0 degC; a reading on an edge belongs above it, also where the edge came about by rounding. */
const ROUNDING = 1e-9;

/**
 * Bins of outdoor temperature, each at the mean temperature of its own hours, coldest first within each part.
 *
 * Take the mean, not the middle of a bin: many weather files hold whole degrees, so that the hours of a bin from 6 up to 8 °C lie at 6 and 7. By middles of 2 K bins a year of
 * heat in Bologna comes out 4.4 % low and in Chicago 0.3 % low; by means, with an edge at the balance point, it is that of the hours.
 *
 * @param input - temperatures [degC], their step [s], width of a bin [K], what to split and part by
 * @returns bins with some time in them [degC, s], for {@link binRun} and `dayNightRun`
 * @throws InputError when a number is impossible, or months are asked for of anything but 365 days
 * @remarks
 * Sources: `common practice`, `loadWeatherChecks`. Bins forget when it was cold: they are right for a unit, not for the mass of a house.
 *
 * Invariants: the times add up to all of the time; times and means to its mean; every mean lies within its edges; a load line that bends only where bins are split has the energy of
 * the hours.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, hours, kelvinDifference } = await import('../units/index.js');
 * const temperatures = [6, 7, 7, 8].map((t) => celsius(t));
 * const bins = weatherBins({ temperatures, step: hours(1), binWidth: kelvinDifference(2), splitAt: [celsius(7)] });
 * expect(bins.map(({ outdoor, time }) => [outdoor, hours.of(time)])).toEqual([[6, 1], [7, 2], [8, 1]]);
 * ```
 */
export function weatherBins({ temperatures, step, binWidth, splitAt = [], by = 'nothing', dayHours }: WeatherBinsInput): readonly PartedBin[] {
  const perDay = demandSteps(temperatures, step);
  demand('binWidth', 'temperature difference', binWidth, { atLeast: 0.1, atMost: 3 }, 'wider bins lose the cold end');
  demandCount('splitAt', splitAt, 0, 10);
  splitAt.forEach((each, index) => demand(`splitAt.${String(index)}`, 'temperature', each, OUTDOOR));
  demandChoice('by', by, ['nothing', 'month']);
  if (dayHours !== undefined) demandDay(dayHours);
  const months = by === 'month' ? monthsOf(temperatures.length, perDay) : undefined;
  const splits = [...splitAt].sort((a, b) => a - b);
  const bins = new Map<string, { readonly order: readonly number[]; steps: number; sum: number }>();
  for (const [index, temperature] of temperatures.entries()) {
    const second = (index % perDay) * step;
    const night = dayHours === undefined ? -1 : Number(second < dayHours.dayBegins || second >= dayHours.dayEnds);
    const order = [
      months?.[Math.floor(index / perDay)] ?? 0,
      night,
      Math.floor(temperature / binWidth + ROUNDING),
      splits.filter((each) => each <= temperature).length,
    ];
    const key = order.join(' ');
    const bin = bins.get(key) ?? { order, steps: 0, sum: 0 };
    bin.steps += 1;
    bin.sum += temperature;
    bins.set(key, bin);
  }
  const sorted = [...bins.values()].sort((a, b) => a.order.map((each, i) => each - (b.order[i] ?? 0)).find((each) => each !== 0) ?? 0);
  return sorted.map(({ order: [month = 0, night = -1, place = 0, part = 0], steps, sum }) => ({
    outdoor: (sum / steps) as Temperature,
    time: (steps * step) as Time,
    lowerEdge: Math.max(place * binWidth, splits[part - 1] ?? -Infinity) as Temperature,
    upperEdge: Math.min((place + 1) * binWidth, splits[part] ?? Infinity) as Temperature,
    ...(month === 0 ? {} : { month }),
    ...(night < 0 ? {} : { dayPart: night === 1 ? ('night' as const) : ('day' as const) }),
  }));
}

function demandSteps(temperatures: WeatherBinsInput['temperatures'], step: Time): number {
  if (!(temperatures instanceof Float64Array)) demandCount('temperatures', temperatures, 1, 1e6);
  else demand('temperatures', 'count', temperatures.length, { atLeast: 1, atMost: 1e6 });
  for (const [index, each] of temperatures.entries()) {
    // Asked before the name of the place is made, which would cost more than the bins of a year.
    if (!(typeof each === 'number' && each >= OUTDOOR.atLeast && each <= OUTDOOR.atMost)) {
      demand(`temperatures.${String(index)}`, 'temperature', each, OUTDOOR);
    }
  }
  demand('step', 'time', step, { atLeast: 60, atMost: 3600 }, 'seconds; an hour is 3600');
  const perDay = Math.round(DAY / step);
  if (Math.abs(perDay * step - DAY) < 1e-6) return perDay;
  throw new InputError({ code: 'impossible', argument: 'step', value: { kind: 'time', value: step }, allowed: 'a whole part of a day' });
}

function demandDay(dayHours: DayHours): void {
  demandObject('dayHours', dayHours);
  demand('dayHours.dayBegins', 'time', dayHours.dayBegins, { atLeast: 0, below: DAY });
  demand('dayHours.dayEnds', 'time', dayHours.dayEnds, { above: dayHours.dayBegins, atMost: DAY });
}

/** The month of each day of the year. */
function monthsOf(steps: number, perDay: number): readonly number[] {
  if (steps === 365 * perDay) return MONTH_DAYS.flatMap((days, month) => Array.from({ length: days }, () => month + 1));
  throw new InputError({
    code: 'impossible',
    argument: 'temperatures',
    value: { kind: 'count', value: steps },
    allowed: `the 365 days of a year, ${String(365 * perDay)} steps`,
    hint: 'leave 29 February out, or do not part by months',
  });
}
