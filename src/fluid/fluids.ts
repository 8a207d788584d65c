import { demand, demandChoice, demandObject, InputError } from '../errors/index.js';
import type { MassFraction, Shape } from '../units/index.js';
import type { FluidName, FluidRecord } from './fluid-record.js';
import { PROPYLENE_GLYCOL } from './propylene-glycol.data.js';
import { WATER } from './water.data.js';

/** The fluids that a document may name; those with a record of their own are given by the record, and weigh nothing where they are not. */
export type Fluid = 'water' | 'propylene-glycol';

/** A fluid: by its name, where the name alone tells the record, or as a record, such as `ETHANOL`. */
export type AnyFluid = Fluid | FluidRecord;

/** What a function is asked, with any fluid in the place of a named one. */
export type OfAnyFluid<T extends { readonly fluid: Fluid }> = Omit<T, 'fluid'> & {
  /** The fluid, by name or record. */
  readonly fluid: AnyFluid;
};

/** What is in the loop: a fluid and the mass share of antifreeze in it. */
export interface FluidChoice {
  /** The fluid. */
  readonly fluid: Fluid;
  /** Mass of antifreeze per mass of finished solution; 0 for water [kg/kg]. */
  readonly massFraction: MassFraction;
}

/** The names of the fluids that a name alone tells, for lists and shapes. */
export const FLUID_NAMES: readonly Fluid[] = ['water', 'propylene-glycol'];

/** The names of all fluids with a record, for lists and shapes. */
export const FLUID_RECORD_NAMES: readonly FluidName[] = [
  'water',
  'propylene-glycol',
  'ethylene-glycol',
  'ethanol',
  'methanol',
  'glycerol',
  'potassium-carbonate',
  'potassium-formate',
  'potassium-acetate',
  'calcium-chloride',
];

/** Shape of {@link FluidChoice}. */
export const fluidChoiceShape: Shape<FluidChoice> = { fluid: FLUID_NAMES, massFraction: 'mass fraction' };

/** The record of each fluid. */
const FLUIDS: Readonly<Record<Fluid, FluidRecord>> = { water: WATER, 'propylene-glycol': PROPYLENE_GLYCOL };

/**
 * The record of a fluid.
 *
 * @param fluid - its name, or the record itself
 * @returns what the room knows of it
 * @throws InputError when the name is none of the fluids, or the record is not made like one of this library
 */
export function demandFluid(fluid: AnyFluid): FluidRecord {
  if (typeof fluid === 'object') return demandRecord(fluid);
  demandChoice('fluid', fluid, FLUID_NAMES);
  return FLUIDS[fluid];
}

/**
 * The record of a fluid at a concentration that its fits cover.
 *
 * @param choice - fluid and mass fraction
 * @returns what the room knows of the fluid
 * @throws InputError when the fluid is unknown or the mass fraction outside its fits
 */
export function demandFluidChoice({ fluid, massFraction }: OfAnyFluid<FluidChoice>): FluidRecord {
  const record = demandFluid(fluid);
  const { name, highestMassFraction } = record;
  const hint = highestMassFraction === 0 ? `${name} holds no antifreeze` : `the fits of ${name} end there`;
  demand('massFraction', 'mass fraction', massFraction, { atLeast: 0, atMost: highestMassFraction }, hint);
  return record;
}

/** Records found sound before: a look through the tables takes longer than a computation with them. */
const SOUND: WeakSet<object> = /* @__PURE__ */ new WeakSet();

/** A record that a caller brings along: each part there, each number finite, so that nothing comes back NaN. */
function demandRecord(record: FluidRecord): FluidRecord {
  demandObject('fluid', record);
  if (!SOUND.has(record) && !madeLike(WATER, record)) {
    throw new InputError({ code: 'impossible', argument: 'fluid', value: String(record.name), allowed: 'a record of this library' });
  }
  SOUND.add(record);
  return record;
}

/** Whether a thing has the parts of a pattern, numbers finite, lists of any length but empty. */
function madeLike(pattern: unknown, thing: unknown): boolean {
  if (typeof pattern === 'number') return Number.isFinite(thing);
  if (Array.isArray(pattern)) return Array.isArray(thing) && thing.length > 0 && thing.every((each) => madeLike(pattern[0], each));
  if (typeof pattern !== 'object' || pattern === null) return typeof thing === typeof pattern;
  return Object.entries(pattern).every(([key, part]) => madeLike(part, Reflect.get(Object(thing), key)));
}
