import { demand, demandChoice, demandCount, demandObject, InputError } from '../errors/index.js';
import type { DayOfYear, Flow, Fraction, Power, Shape, Temperature } from '../units/index.js';
import { type ColdWater, coldWaterShape, demandColdWater } from './cold-water.js';
import { HOT, STORED } from './hot-water.data.js';

/** Hot water drawn on a day at home, as a meter in the cold pipe to the heater counts it. */
export type HotWaterDraw =
  | {
      /** So much for every person. */
      readonly by: 'persons';
      /** People of the household, 1 to 1000. */
      readonly persons: number;
      /** Hot water of a person, 1 to 1000 L/d; 25 to 60 is common [m3/s]. */
      readonly perPerson: Flow;
    }
  | {
      /** Measured, or known otherwise. */
      readonly by: 'household';
      /** Hot water of the household, 1 to 1e6 L/d [m3/s]. */
      readonly dailyDraw: Flow;
    };

/** Days on which nobody draws hot water. */
export interface AbsentDays {
  /** First day of the absence, a whole number of 1 to 365 [d]. */
  readonly firstDay: DayOfYear;
  /** Last day of the absence, itself included, not before the first, up to 365; an absence over the new year is two [d]. */
  readonly lastDay: DayOfYear;
}

/** What {@link hotWaterDemand} needs. */
export interface HotWaterInput {
  /** Hot water of a day. */
  readonly draw: HotWaterDraw;
  /** Temperature that the draw is counted at, 36 to 60; a hotter draw is to be counted as so much more at 60 [degC]. */
  readonly hotTemperature: Temperature;
  /** Cold water through the year. */
  readonly coldWater: ColdWater;
  /** Heat that the tank loses, day and night, 0 to 1e5; 0 for none [W]. */
  readonly tankLoss: Power;
  /** Heat that the circulation loses, on the mean over day and night, 0 to 1e5; 0 for none [W]. */
  readonly circulationLoss: Power;
  /** Share of the day's draw in each hour, midnight first: 24 of them with a sum of 1; evenly over the day when left out. */
  readonly hourShares?: readonly Fraction[];
  /** Days without a draw, 1 to 100 spans; none when left out. The losses go on. */
  readonly absences?: readonly AbsentDays[];
  /** Temperature in the tank, 36 to 95; that of the draw when left out. Only looked at for findings [degC]. */
  readonly storageTemperature?: Temperature;
  /** Highest supply temperature that the unit can make, 36 to 100; not looked at when left out [degC]. */
  readonly highestSupply?: Temperature;
}

/** Shape of {@link HotWaterInput}. */
export const hotWaterInputShape: Shape<HotWaterInput> = {
  draw: { by: 'by', oneOf: { persons: { persons: 'count', perPerson: 'flow' }, household: { dailyDraw: 'flow' } } },
  hotTemperature: 'temperature',
  coldWater: coldWaterShape,
  tankLoss: 'power',
  circulationLoss: 'power',
  hourShares: { optional: { list: 'fraction' } },
  absences: { optional: { list: { firstDay: 'day of year', lastDay: 'day of year' } } },
  storageTemperature: { optional: 'temperature' },
  highestSupply: { optional: 'temperature' },
};

/** A litre a day [m3/s]. */
const LITRE_A_DAY = 1.1574074074074074e-8;

/** Rounding of 24 written shares. */
const SUM_TOLERANCE = 1e-6;

/** Refuses hot water that no household has. */
export function demandHotWater(input: HotWaterInput): void {
  demandDraw(input.draw);
  demand('hotTemperature', 'temperature', input.hotTemperature, HOT);
  demandColdWater(input.coldWater);
  demand('tankLoss', 'power', input.tankLoss, { atLeast: 0, atMost: 1e5 });
  demand('circulationLoss', 'power', input.circulationLoss, { atLeast: 0, atMost: 1e5 });
  if (input.hourShares !== undefined) demandShares(input.hourShares);
  if (input.absences !== undefined) demandAbsences(input.absences);
  if (input.storageTemperature !== undefined) demand('storageTemperature', 'temperature', input.storageTemperature, STORED);
  if (input.highestSupply !== undefined) demand('highestSupply', 'temperature', input.highestSupply, { atLeast: STORED.atLeast, atMost: 100 });
}

function demandDraw(draw: HotWaterDraw): void {
  demandObject('draw', draw);
  demandChoice('draw.by', draw.by, ['persons', 'household']);
  if (draw.by === 'household') {
    demand('draw.dailyDraw', 'flow', draw.dailyDraw, { atLeast: LITRE_A_DAY, atMost: 1e6 * LITRE_A_DAY });
    return;
  }
  demand('draw.persons', 'count', draw.persons, { atLeast: 1, atMost: 1000 });
  demand('draw.perPerson', 'flow', draw.perPerson, { atLeast: LITRE_A_DAY, atMost: 1000 * LITRE_A_DAY });
}

function demandShares(shares: readonly Fraction[]): void {
  demandCount('hourShares', shares, 24, 24);
  shares.forEach((share, hour) => demand(`hourShares.${String(hour)}`, 'fraction', share, { atLeast: 0, atMost: 1 }));
  const sum = shares.reduce((total, share) => total + share, 0);
  if (Math.abs(sum - 1) <= SUM_TOLERANCE) return;
  const hint = 'percentages may stand for shares, or an hour be left out';
  throw new InputError({ code: 'impossible', argument: 'hourShares', value: { kind: 'fraction', value: sum }, allowed: 'a sum of 1', hint });
}

function demandAbsences(absences: readonly AbsentDays[]): void {
  demandCount('absences', absences, 1, 100);
  absences.forEach((absence, index) => {
    const at = `absences.${String(index)}`;
    demandObject(at, absence);
    demandWholeDay(`${at}.firstDay`, absence.firstDay, 1);
    demandWholeDay(`${at}.lastDay`, absence.lastDay, absence.firstDay);
  });
}

function demandWholeDay(argument: string, day: DayOfYear, atLeast: number): void {
  demand(argument, 'day of year', day, { atLeast, atMost: 365 });
  if (Number.isInteger(day)) return;
  throw new InputError({ code: 'out-of-range', argument, value: { kind: 'day of year', value: day }, allowed: 'a whole day' });
}
