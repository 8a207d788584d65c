import type { Assumption, AssumptionCode } from '../plan/index.js';
import { show, type UnitSystem } from './show.js';

const TEXTS: Readonly<Record<AssumptionCode, (value: string) => string>> = {
  'cold-spell': (value) => `In a cold spell the unit heats for ${value} without a pause.`,
  'hot-day': (value) => `On a hot day the unit cools for ${value} without a pause.`,
  'fill-density-share': (value) =>
    `The trench fill is as dense and as moist as the soil beside it (${value}). Loosened fill conducts worse for one to three winters: put it back in layers and tamp it.`,
  'ice-credit': (value) => `Freezing of the ground is credited with ${value} of its heat. In moist soil it would help; leaving it out is a reserve.`,
  'other-season-credit': (value) => `Heat put into the ground in the other season is credited with ${value}.`,
  'lead-length': (value) => `Of each coil ${value} lies between trench and header; the rest lies in the trench.`,
  'circulator-power': (value) =>
    `No circulator is given; ${value} was taken. Its electricity is in no figure of the year, and its heat, which helps a little in winter, is not in the fluid. Give its power.`,
  'distance-to-house': (value) =>
    `No distance to the house is given; ${value} was taken. Give it: the run there adds to the pump’s head and to what is filled in.`,
  'freeze-margin': (value) => `The fluid must not freeze until ${value} below the coldest fluid the unit lets through.`,
};

/**
 * What an assumption says, for a person.
 *
 * @param assumption - an assumption of a plan
 * @param system - metric or US units
 * @returns one or two sentences
 */
export function describeAssumption({ code, assumed }: Assumption, system: UnitSystem): string {
  const value = assumed.kind === 'count' ? String(assumed.value) : show(system)(assumed.kind, assumed.value);
  return TEXTS[code](value);
}
