import { readBuilding } from '../building/index.js';
import { locate } from '../errors/index.js';
import { groundWave } from '../climate/index.js';
import { layoutFrom } from '../ground/index.js';
import { readHeatPump } from '../heat-pump/index.js';
import { pipeDimensions } from '../pipe/index.js';
import type { Length, PipeLength, Time } from '../units/index.js';
import { airMonths } from './air-months.js';
import { demandLoopInput } from './demand-input.js';
import { emittersOf } from './emitters.js';
import { loopFluid } from './fluid-plan.js';
import { levelsOf } from './levels.js';
import { designSeasons } from './design-seasons.js';
import { groundBeside } from './ground-beside.js';
import { groundFreezes } from './ground-freezes.js';
import { groundState } from './ground-state.js';
import { hotWaterOfPlan, restOfGround } from './hot-water.js';
import { hydraulicsOf } from './hydraulics.js';
import type { LoopInput } from './loop-input.js';
import type { LoopPlan } from './loop-plan.js';
import { besideUsual, loopOf } from './loop-result.js';
import { modesOf } from './modes.js';
import { neededBand } from './needed-band.js';
import { planFindings } from './plan-findings.js';
import { planSeason } from './plan-season.js';
import { assumptionsOf, noticesOf, onlyOnce, sourcesOf } from './remarks.js';
import { modeResults } from './mode-results.js';
import { usedSources } from './used-sources.js';
import { surfaceAndAir } from './surface-and-air.js';
import { soilView } from './soil-view.js';
import { supplyByHours } from './supply-by-hours.js';
import type { HoursFixed } from './by-hours.js';
import { loopByHours } from './loop-by-hours.js';
import type { Fixed } from './solve.js';
import { solveByHours } from './solve-by-hours.js';
import { groundByHours, yearOfHours } from './year-of-hours.js';
import { startOf } from './months.js';

/**
 * Unbroken running at the end of the hardest month: a cold spell of 72 hours, which sets the coldest fluid of a shallow loop, and the
 * afternoon and evening of a hot day, 6 hours [s].
 */
const PEAK_TIMES = { heating: 259_200 as Time, cooling: 21_600 as Time } as const;

/**
 * The whole job: from samples, climate, house and rating points to whole trenches of whole coils, sized by the hour.
 *
 * The closed form proposes: with the unit at the coldest (warmest) fluid its limits allow, and a spell of hard running at the end of each month. The hours decide: the
 * usual year in hours, with a spell of the design weather where the usual year does not reach it, is followed to the year that repeats, and the
 * fluid must keep the unit's limits in the first year as in that one. Trenches and coils are whole numbers, each followed with its own interference and its own flow;
 * the next smaller loop is followed, too, and must fail. The length takes no credit for freezing and the trench fill for native soil; the loop found is followed in loosened and
 * settled fill, and with the ice around its pipes, where `trenchFill` and `followIce` ask for it. The
 * circulator counts where it is given; the year is a usual one unless colder months are given. Of a unit with a heating curve the closed form takes the water at design, the hours
 * that of the hour. Of a unit of several levels the closed form takes the highest. Hot water comes first in every hour, at its own condition; the closed form adds its heat from the ground to that of each month.
 *
 * @param input - see {@link LoopInput}
 * @returns the loop to build with every step that led to it, findings, notices and assumptions
 * @throws InputError with the place in the input: impossible values, a design load beyond 1e7 W among them; `unreachable` when the unit's limit does not go beyond the ground's
 * own temperature, or no coil fits the field
 * @remarks Rests on the rooms it calls. Tested: the loop one trench smaller is not enough; more load or closer trenches never shorten the need, nor does drier
 * soil as long as the unit's limit lies well below the ground's lowest temperature, nor hot water; the same job in US units gives the same loop.
 * @example
 * ```ts @import.meta.vitest
 * const { demoDocument } = await import('../demo.data.js');
 * const { inputDocument } = await import('../document/index.js');
 * const plan = planLoop(inputDocument().read(demoDocument));
 * expect(plan.loop.circuits.activePipe).toBeGreaterThanOrEqual(plan.loop.needed.estimate);
 * expect(plan.loop.nextSmaller?.enough).toBe(false);
 * ```
 */
export function planLoop(input: LoopInput): LoopPlan {
  demandLoopInput(input);
  const { circuits, field } = input;
  const { heating = PEAK_TIMES.heating, cooling = PEAK_TIMES.cooling } = input.peakTimes ?? {};
  const peakTimes = { heating, cooling };
  const { findings: buildingFindings, ...building } = locate('building', () => readBuilding(input.building));
  const unit = locate('heatPump', () => readHeatPump(input.heatPump));
  const { findings: climateFindings, wave } = locate('climate', () => groundWave(input.climate));
  const layout = locate('field.layout', () => layoutFrom(field.layout, 1));
  const pipe = locate('pipe', () => pipeDimensions(input.pipe));
  const soil = soilView(input.soil.layers, layout, pipe.outsideDiameter);
  const header = locate('header', () => pipeDimensions(input.header));
  const hotWater = hotWaterOfPlan(input, unit);
  const emitters = emittersOf(input, building, unit);
  const fluid = loopFluid(input.fluid, unit);
  const airPlace = input.airMonths === undefined ? 'climate' : 'airMonths';
  const usualMonths = airMonths(input.climate, input.airMonths);
  const seasons = designSeasons({ designWinter: input.designWinter, designSummer: input.designSummer, usualMonths, airPlace, wave });
  const { modes, findings: modeFindings } = modesOf({ building, unit, fluid, airMonths: seasons.months, hotWater });

  const state = groundState(seasons.surface, soil.effective, layout);
  const facts = { ...state, view: soil, surface: seasons.surface, layout, outsideDiameter: pipe.outsideDiameter };
  const besideOf = groundBeside(input, facts);
  const fixed: Fixed = { ...state, ...field, circuits, pipe, flow: unit.sourceFlow, peakTimes, modes };
  const running = modes.map(({ design }) => design.unit.mode);
  const year = yearOfHours({ building, modes: running, seasons, airPlace, peakTimes });
  const supply = supplyByHours(unit, year.outdoor, input.heatPump.highestSupply);
  const levels = levelsOf(input.lowerLevels, unit, supply);
  const { power, ...pump } = input.pump ?? {};
  const hours: HoursFixed = {
    unit,
    fluid,
    modes: running,
    loads: year.loads,
    groundHours: groundByHours(state.ground),
    start: startOf(modes),
    ...(supply && { supply }),
    ...(levels && { levels }),
    ...(hotWater && { hotWater }),
    ...(power === undefined ? {} : { pump: { ...pump, powerAt: () => power } }),
  };
  const solved = solveByHours(fixed, hours);
  const { chosen } = solved;
  const { findings: besideFindings, sources: besideSources, ...beside } = besideOf(solved, hours);
  const {
    needed,
    longestEnd,
    findings: bandFindings,
  } = neededBand(fixed, chosen, { surface: seasons.surface, soil: soil.effective, conductivity: soil.conductivity });
  const results = modeResults(modes, chosen, solved.sized.binding.limit === 'highestEntering' ? 'cooling' : 'heating');
  const { findings: usualFindings, ...usual } = besideUsual(chosen, results);
  const { season, findings: seasonFindings } = planSeason(solved.laid.lastYear, input);
  const loop = { ...loopOf(solved, needed, results), usual };
  const hydraulics = hydraulicsOf({ chosen, circuits, pipe, header, fluid, modes, flow: unit.sourceFlow });

  const filled = input.trenchFill !== undefined;
  const coldestLeaving = results.modes.heating?.unit.fluid.leaving;
  const findings = onlyOnce([
    ...planFindings({ chosen, needed, longestEnd, trench: loop.trench, fluid, unit, coldestLeaving, filled }),
    ...bandFindings,
    ...year.findings,
    ...solved.laid.findings,
    ...besideFindings,
    ...soil.findings,
    ...climateFindings.filter(({ code }) => seasons.winter === undefined || code !== 'no-cold-winter-used'),
    ...seasons.findings,
    ...groundFreezes(state.ground, input.climate),
    ...(input.airMonths === undefined ? [] : surfaceAndAir(wave, input.airMonths)),
    ...buildingFindings,
    // Where the hours follow the curve, no one supply temperature is taken for the year.
    ...unit.findings.filter(({ code }) => supply === undefined || code !== 'supply-taken-as-fixed'),
    ...(emitters?.findings ?? []),
    ...(hotWater?.findings ?? []),
    ...(levels?.findings ?? []),
    ...restOfGround(solved.laid.lastYear.months ?? []),
    ...seasonFindings,
    ...modeFindings,
    ...chosen.response.findings,
    ...results.findings,
    ...usualFindings,
    ...hydraulics.findings,
  ]);
  const assumptions = assumptionsOf({
    peakTimes,
    cools: modes.length > 1,
    leadLength: circuits.leadLength ?? (0 as PipeLength),
    fluid,
    circulates: input.pump !== undefined,
    filled,
    ...(circuits.distanceToHouse === undefined ? { distanceTaken: 0 as Length } : {}),
  });
  const { onDay: _, ...pipes } = state.ground;
  return {
    name: input.name,
    soil: { layers: soil.layers, effective: soil.effective, conductivity: soil.conductivity },
    ground: { surface: wave, pipes },
    ...(seasons.winter && { designWinter: seasons.winter }),
    ...(seasons.summer && { designSummer: seasons.summer }),
    ...results.modes,
    governing: results.governing,
    pipe,
    fluid: { ...fluid, charge: hydraulics.charge },
    loop,
    byHours: loopByHours(solved, hours, year.weather),
    season,
    ...beside,
    ...(emitters && { emitters: emitters.emitters }),
    hydraulics: hydraulics.result,
    findings,
    notices: noticesOf(Math.max(...layout.pipes.map(({ depth }) => depth)), fluid, hotWater !== undefined),
    assumptions,
    sources: sourcesOf(
      findings,
      assumptions,
      soil.sources,
      usedSources({
        climate: input.climate,
        response: chosen.response,
        modes: results.modes,
        pipe,
        header,
        fluid,
        emits: supply !== undefined || emitters !== undefined,
        makesHotWater: hotWater !== undefined,
      }),
      besideSources,
    ),
  };
}
