import { MONTH_DAYS } from '../states/index.js';
import type { Shape, Temperature } from '../units/index.js';
import type { Books } from './books.js';
import { type ModeLedger, modeLedgerShape } from './ledger.js';
import type { Course } from './simulation.js';

/** A calendar month of a simulated year. */
export interface MonthOfRun {
  /** 1 to 12. */
  readonly month: number;
  /** Heating. */
  readonly heating: ModeLedger;
  /** Cooling. */
  readonly cooling: ModeLedger;
  /** Hot water, where it is asked for; no part of heating. */
  readonly hotWater?: ModeLedger;
  /** Mean wall of the pipes [degC]. */
  readonly meanWall: Temperature;
}

/** Shape of {@link MonthOfRun}. */
export const monthOfRunShape: Shape<MonthOfRun> = {
  month: 'count',
  heating: modeLedgerShape,
  cooling: modeLedgerShape,
  hotWater: { optional: modeLedgerShape },
  meanWall: 'temperature',
};

const DAY = 86_400;

/**
 * The months of a year; a year of 366 days has a 29 February.
 *
 * @param books - the ledgers from one step to another
 * @param course - of every step
 * @param step - length of a step [s]
 * @returns twelve rows, or nothing where the steps make up no calendar year or do not end with the months
 */
export function monthTable(books: (from: number, to: number) => Books, course: Course, step: number): readonly MonthOfRun[] | undefined {
  const days = (course.walls.length * step) / DAY;
  if ((days !== 365 && days !== 366) || DAY % step !== 0) return undefined;
  const perDay = DAY / step;
  let to = 0;
  return MONTH_DAYS.map((length, index) => {
    const from = to;
    to += (index === 1 ? length + days - 365 : length) * perDay;
    const wall = course.walls.subarray(from, to).reduce((sum, each) => sum + each, 0) / (to - from);
    return {
      month: index + 1,
      ...books(from, to),
      meanWall: wall as Temperature,
    };
  });
}
