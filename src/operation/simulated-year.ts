import type { DayOfYear, Shape, Temperature } from '../units/index.js';
import { booksOf, judgedLoads } from './books.js';
import { monthTable } from './month-table.js';
import type { Course, Extreme, FluidExtremes, SimulatedDuty, SimulatedYear } from './simulation.js';

/** Shape of {@link Extreme}. */
export const extremeShape: Shape<Extreme> = { temperature: 'temperature', day: 'day of year' };

const DAY = 86_400;

/** What a year came to. */
export function simulatedYear(year: number, duty: SimulatedDuty, course: Course, step: number, withCourse: boolean): SimulatedYear {
  const books = booksOf(duty, course, step);
  const months = monthTable(books, course, step);
  return {
    year,
    ...extremesOf(judgedLoads(duty), course, step),
    ...books(0, duty.loads.length),
    ...(months && { months }),
    ...(withCourse ? { course } : {}),
  };
}

/** The fluid at its coldest while heating and its warmest while cooling. */
export function extremesOf(loads: ArrayLike<number>, course: Course, step: number): FluidExtremes {
  const coldestEntering = extreme(course.enteringFluids, loads, step, -1);
  const coldestLeaving = extreme(course.leavingFluids, loads, step, -1);
  const warmestEntering = extreme(course.enteringFluids, loads, step, 1);
  const warmestLeaving = extreme(course.leavingFluids, loads, step, 1);
  return {
    ...(coldestEntering && { coldestEntering }),
    ...(coldestLeaving && { coldestLeaving }),
    ...(warmestEntering && { warmestEntering }),
    ...(warmestLeaving && { warmestLeaving }),
  };
}

/** The highest while cooling (side 1) or the lowest while heating (side −1); steps without running hold no number and never win. */
function extreme(course: Float64Array, loads: ArrayLike<number>, step: number, side: 1 | -1): Extreme | undefined {
  let best = -Infinity;
  let at = -1;
  for (let index = 0; index < course.length; index += 1) {
    const each = side * (course[index] ?? Number.NaN);
    if (each > best && side * (loads[index] ?? 0) < 0) {
      best = each;
      at = index;
    }
  }
  return at < 0 ? undefined : { temperature: (side * best) as Temperature, day: (1 + ((at + 1) * step) / DAY) as DayOfYear };
}
