import type { Finding } from '../findings/index.js';
import { extrapolationFindings } from '../heat-pump/index.js';
import type { Fraction, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { demandSimulation } from './demand-simulation.js';
import type { ModeLedger } from './ledger.js';
import { LoopYears, type WarmStart } from './loop-years.js';
import { type Plant, plantOf } from './plant.js';
import { emptyCourse } from './run-year.js';
import { simulatedYear } from './simulated-year.js';
import type { Course, SimulatedYear, Simulation, SimulationInput } from './simulation.js';

/**
 * Follows a loop step by step through its first year and to the year that repeats.
 *
 * In every step the load, the unit at its entering fluid, the film at its regime and the wall are solved together. The unit runs the share of the step that
 * meets the load; the wall sees the mean heat of the step, film, pipe wall and fluid see the heat while running; auxiliary heat meets the rest. Of two levels
 * run in one step, or of hot water and house, film and range see the mean while running, and the fluid is reported at the harder of the two, by the film of
 * that mean. Hot water comes first; the house is served in what is left of the step.
 * Temperatures are those at the end of the step. Steps without running report the wall and count in no extreme. Flow is constant while running. The
 * properties of the ground do not change: freezing is left out, which keeps a reserve.
 *
 * The year that repeats is found by giving each part of the ground's memory its own correction after every year, which takes two or three years.
 *
 * @param input - see {@link SimulationInput}
 * @returns first and last year with extremes, energies and months, and what to look at
 * @throws InputError for a value out of its range; `missing` without a number of years below a sealed surface; `unreachable` when a
 * load takes the fluid out of all bounds
 * @remarks Superposition by decaying exponentials; checked against full convolution over 20 years and finite elements over three years. Invariants tested: energies
 * balance to 1e-9; lengths times c and times times c² give the same temperatures; heating and cooling mirror one another; no load leaves the ground
 * as it is.
 * @example
 * ```ts @import.meta.vitest
 * const { hours, pipeMetres, pipeMetreKelvinPerWatt, wattsPerKelvin } = await import('../units/index.js');
 * const day = (step: number) => 1 + step / 24;
 * const year = Array.from({ length: 8760 }, (_, step) => Math.cos((2 * Math.PI * (day(step) - 20)) / 365));
 * const { lastYear, repeats } = simulate({
 *   step: hours(1),
 *   duty: { from: 'ground', loads: year.map((wave) => 5000 * Math.max(0, wave)) },
 *   ground: year.map((wave) => 10 - 5 * wave),
 *   response: { terms: [{ timeConstant: hours(24), rise: pipeMetreKelvinPerWatt(0.3) }, { timeConstant: hours(2000), rise: pipeMetreKelvinPerWatt(0.4) }],
 *     steadyRise: pipeMetreKelvinPerWatt(0.7) },
 *   pipeLength: pipeMetres(500),
 *   resistanceAt: () => pipeMetreKelvinPerWatt(0.1),
 *   heatCapacityRate: wattsPerKelvin(2000),
 * });
 * expect(repeats).toBe(true);
 * expect(lastYear.coldestEntering?.temperature).toBeLessThan(5);
 * ```
 */
export function simulate(input: SimulationInput): Simulation {
  demandSimulation(input);
  return follow(input, plantOf(input));
}

/** {@link simulate} with input that was checked, tables that other lengths share, and, where there is one, the ground that a like loop settled at. */
export function follow(input: SimulationInput, plant: Plant, like?: WarmStart): Simulation {
  const { duty, step, response, years, withCourse = false } = input;
  const summary = (number: number, course: Course): SimulatedYear => simulatedYear(number, duty, course, step, withCourse);
  const loop = new LoopYears(input, plant, emptyCourse(duty.loads.length, plant));
  loop.run();
  const yearOne = summary(1, loop.course);
  // The first year may be handed out with its course; all others share one.
  if (withCourse) loop.course = emptyCourse(duty.loads.length, plant);
  const repeats = years === undefined && loop.settle(like);
  while (years !== undefined && loop.years < years) loop.run();
  const lastYear = loop.years === 1 ? yearOne : summary(loop.years, loop.course);
  return {
    yearOne,
    lastYear,
    repeats,
    drift: loop.drift as TemperatureDifference,
    conventions: {
      wallCondition: response.wallCondition ?? 'equal flux',
      temperaturesAt: 'end of step',
      partLoad: input.cyclesPerHour === undefined ? 'even running' : 'end of run',
      circulatorHeat: plant.circulatorHeat as Fraction,
      yearTime: (step * duty.loads.length) as Time,
    },
    findings: findingsOf(input, [yearOne, lastYear], loop.manyStates * step),
    sources: ['ingersoll1954', 'carslawJaeger1959'],
  };
}

/** What the years of a loop give to look at; `manyStatesTime` is how long the fluid may have had other states [s]. */
export function findingsOf({ duty }: Pick<SimulationInput, 'duty'>, years: readonly SimulatedYear[], manyStatesTime: number): readonly Finding[] {
  // Where it is mild the unit is better than its outermost rating point, and little depends on how much; the hard side is what a loop is sized by.
  const coldest = (of: (year: SimulatedYear) => ModeLedger | undefined): number =>
    Math.min(...years.map((year) => of(year)?.coldestFluid ?? Infinity));
  const warmest = Math.max(...years.map(({ cooling }) => cooling.warmestFluid ?? -Infinity));
  const units = duty.from === 'building' ? duty : undefined;
  const extrapolated = (
    [
      [units?.heating, coldest(({ heating }) => heating)],
      [units?.cooling, warmest],
      [units?.hotWater?.heating, coldest(({ hotWater }) => hotWater)],
    ] as const
  ).flatMap(([unit, fluid]) => (unit === undefined || !Number.isFinite(fluid) ? [] : extrapolationFindings(unit, fluid as Temperature)));
  const time = manyStatesTime as Time;
  return [...extrapolated, ...(time > 0 ? [{ code: 'film-states', level: 'note', values: { time }, source: 'common practice' } as const] : [])];
}
