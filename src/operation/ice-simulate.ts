import type { Finding } from '../findings/index.js';
import type { Length, Temperature, TemperatureDifference, VolumetricWater } from '../units/index.js';
import { demandSimulation } from './demand-simulation.js';
import { GroundMemory } from './ground-memory.js';
import { IceFollower } from './ice-follower.js';
import type { YearOfIce } from './ice-result.js';
import { demandIceAround, type IceSimulation, type IceSimulationInput } from './ice-simulation.js';
import { FUSION_OF_WATER } from './ice-soil.js';
import { iceYear, type IceLoop } from './ice-year.js';
import { LoopYears } from './loop-years.js';
import { plantOf } from './plant.js';
import { emptyCourse } from './run-year.js';
import { follow } from './simulate.js';
import { simulatedYear } from './simulated-year.js';
import type { Course, SimulatedYear } from './simulation.js';

/** In drier soil the water may have gone by winter, and little of it is free to freeze [m3/m3]. */
const DRY = 0.1;
/** No ice further from a pipe than this counts, whatever the room: by then the ground around is no longer round about the pipe [m]. */
const FURTHEST = 0.75;
/** A year repeats when so much at most of what froze in it is left over at its end [1]. */
const LEFT_OVER = 0.01;

/**
 * Follows a loop twice: without ice, as {@link simulate} does, and with the ice around its pipes.
 *
 * Around the pipes water freezes and sets heat free, and frozen soil conducts better. Ground and response stay those of the soil without ice; what ice does is
 * reckoned in the ground around one mean pipe and given to the response as heat. A winter without freezing is the same in both to the last digit.
 *
 * Ice does not count in soil with less than 0.10 of water by volume, where frost from above reaches the pipes and has frozen the water already, beyond the point where
 * fronts of neighbouring pipes meet or the front meets the surface, nor more than 0.75 m from a pipe. It is no help in cooling: a loop that summer sizes is
 * judged by the run without ice. Size on `withoutIce` for reserve; judge guidelines
 * that came of experience by `withIce`: the loops behind them had ice, and a computation without it calls them too small.
 *
 * @param input - see {@link IceSimulationInput}
 * @returns both runs, the ice of the first and the last year, and what to look at
 * @throws InputError for a value out of its range, and as {@link simulate} does
 * @remarks Enthalpy in rings around the pipe in scaled temperature (after Kirchhoff), the latent heat a source in the response. Checked against finite elements
 * with freezing (constant heat and a load year) to 0.5 K of wall and 10 % of radius, and against the exact line sink. Invariants tested: the heat of
 * freezing less that of thawing is what the ice holds, to 1e-9; without freezing the runs are alike; with less latent heat and frozen soil like thawed the run tends
 * to the one without ice; more water, no colder wall.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, hours, joulesPerCubicMetreKelvin, kelvinDifference, megajoulesPerCubicMetre, metres, pipeMetreKelvinPerWatt, pipeMetres,
 *   squareMetresPerSecond, volumetricFraction, wattsPerKelvin, wattsPerMetreKelvin } = await import('../units/index.js');
 * const { exponentialResponse, onePipe } = await import('../ground/index.js');
 * const { iceRoomOf } = await import('./ice-simulation.js');
 * const soil = (conductivity: number, heatCapacity: number) => ({
 *   conductivity: wattsPerMetreKelvin(conductivity),
 *   heatCapacity: joulesPerCubicMetreKelvin(heatCapacity),
 *   diffusivity: squareMetresPerSecond(conductivity / heatCapacity),
 * });
 * const layout = onePipe({ depth: metres(1.5), trenches: 4, trenchSpacing: metres(3) });
 * const outsideDiameter = diameterMillimetres(32);
 * const year = Array.from({ length: 8760 }, (_, step) => Math.cos((2 * Math.PI * (step / 24 - 20)) / 365));
 * const { withoutIce, withIce, iceOfLastYear } = simulateWithIce({
 *   step: hours(1),
 *   duty: { from: 'ground', loads: year.map((wave) => 8000 * Math.max(0, wave)) },
 *   ground: year.map((wave) => 9 - 5 * wave),
 *   response: exponentialResponse({ layout, pipe: { outsideDiameter }, soil: soil(1.5, 2.3e6) }),
 *   pipeLength: pipeMetres(400),
 *   resistanceAt: () => pipeMetreKelvinPerWatt(0.1),
 *   heatCapacityRate: wattsPerKelvin(2000),
 *   years: 2,
 *   freezingGround: {
 *     ...iceRoomOf(layout),
 *     soil: {
 *       thawed: soil(1.5, 2.3e6),
 *       frozen: soil(1.95, 1.78e6),
 *       latentHeat: megajoulesPerCubicMetre(83.5),
 *       waterByVolume: volumetricFraction(0.25),
 *       freezing: { type: 'range', range: kelvinDifference(0.5) },
 *     },
 *     outsideDiameter,
 *   },
 * });
 * expect(withIce.lastYear.coldestEntering?.temperature).toBeGreaterThan((withoutIce.lastYear.coldestEntering?.temperature ?? 0) + 0.5);
 * expect(iceOfLastYear.thawDay).toBeLessThan(200);
 * ```
 */
export function simulateWithIce(input: IceSimulationInput): IceSimulation {
  demandSimulation(input);
  demandIceAround(input.freezingGround);
  const { duty, step, years, withCourse = false, pipeLength, freezingGround } = input;
  const { soil, outsideDiameter, nearestPipe = Infinity, shallowestDepth, landWidth } = freezingGround;
  const plant = plantOf(input);
  const radius = outsideDiameter / 2;
  const room = Math.min(nearestPipe / 2, shallowestDepth);
  const reach = Math.min(room, FURTHEST);
  const undisturbed = coldestOf(input.ground);
  const credited = soil.waterByVolume >= DRY && undisturbed >= 0;
  const freezingWater = soil.latentHeat / FUSION_OF_WATER;
  const around: IceLoop = { radius, reach, bounded: room <= FURTHEST, landWidth, freezingWater, step, pipeLength };
  const { stepRise } = new GroundMemory(input.response.terms, step);
  const follower = new IceFollower({ soil, credited, radius, reach }, duty.loads.length, step, pipeLength, stepRise);
  const loop = new LoopYears(input, plant, emptyCourse(duty.loads.length, plant), follower);
  const summary = (number: number, course: Course): SimulatedYear => simulatedYear(number, duty, course, step, withCourse);
  const iceOf = (course: Course): YearOfIce => iceYear(follower, course.walls, around);
  loop.run();
  const yearOne = summary(1, loop.course);
  const iceOfYearOne = iceOf(loop.course);
  if (withCourse) loop.course = emptyCourse(duty.loads.length, plant);
  const settled = years === undefined && loop.settle();
  while (years !== undefined && loop.years < years) loop.run();
  const lastYear = loop.years === 1 ? yearOne : summary(loop.years, loop.course);
  const iceOfLastYear = loop.years === 1 ? iceOfYearOne : iceOf(loop.course);
  const { freezingEnergy, thawingEnergy } = iceOfLastYear;
  return {
    withoutIce: follow(input, plant),
    withIce: {
      yearOne,
      lastYear,
      repeats: settled && Math.abs(freezingEnergy - thawingEnergy) <= LEFT_OVER * freezingEnergy,
      drift: loop.drift as TemperatureDifference,
    },
    credited,
    iceReach: reach as Length,
    iceOfYearOne,
    iceOfLastYear,
    ...(withCourse && { iceCourse: { frozenAreas: follower.frozenAreas, iceHeats: follower.iceHeats } }),
    findings: findingsOf(soil.waterByVolume, undisturbed as Temperature, iceOfLastYear),
    sources: ['ingersoll1954', 'carslawJaeger1959', 'andersonTice1972'],
  };
}

function coldestOf(ground: ArrayLike<number>): number {
  let coldest = Infinity;
  for (let index = 0; index < ground.length; index += 1) coldest = Math.min(coldest, ground[index] ?? Infinity);
  return coldest;
}

function findingsOf(waterByVolume: VolumetricWater, undisturbed: Temperature, year: YearOfIce): readonly Finding[] {
  const { mostIceDay, mergeDay, thawDay, frozenRadius } = year;
  const source = 'common practice';
  if (mostIceDay === undefined) return [];
  const dry = waterByVolume < DRY;
  const findings: Finding[] = [];
  if (dry) findings.push({ code: 'ice-not-credited', level: 'note', values: { waterByVolume, low: DRY as VolumetricWater }, source });
  if (undisturbed < 0) findings.push({ code: 'frost-at-pipes', level: 'warning', values: { undisturbed }, source });
  if (dry || undisturbed < 0) return findings;
  if (mergeDay !== undefined) findings.push({ code: 'ice-merged', level: 'warning', values: { day: mergeDay, frozenRadius }, source });
  if (thawDay === undefined) findings.push({ code: 'ice-remains', level: 'warning', values: { frozenRadius }, source });
  return findings;
}
