import { demandChoice, InputError, quotedChoices } from '../errors/index.js';
import type { ReferenceKey } from '../references/index.js';
import type { Conductivity, HeatCapacity, Shape } from '../units/index.js';
import { HANDBOOK_ROWS, HEAT_LOSS_ROWS, type HandbookRow } from './handbook.data.js';
import { HANDBOOK_MATERIALS, HANDBOOK_STATES, type HandbookMaterial, type HandbookState } from './handbook-words.js';

/** A soil as a handbook names it. */
export interface HandbookQuestion {
  /** What it is. */
  readonly material: HandbookMaterial;
  /** How wet it is; not every state is tabled for every material. */
  readonly state: HandbookState;
}

/** What one handbook has for a soil. */
export interface HandbookValue {
  /** Least conductivity; absent where the handbook gives none [W/(m.K)]. */
  readonly low?: Conductivity;
  /** The one it recommends; absent where it gives a range only [W/(m.K)]. */
  readonly recommended?: Conductivity;
  /** Greatest conductivity; absent where the handbook gives none [W/(m.K)]. */
  readonly high?: Conductivity;
  /** Least volumetric heat capacity; absent where the handbook gives none [J/(m3.K)]. */
  readonly heatCapacityLow?: HeatCapacity;
  /** Greatest volumetric heat capacity; absent where the handbook gives none [J/(m3.K)]. */
  readonly heatCapacityHigh?: HeatCapacity;
  /** The handbook. */
  readonly source: ReferenceKey;
}

/** What handbooks have for a soil, and the value to design with. */
export interface HandbookConductivity extends HandbookQuestion {
  /** Least conductivity of all handbooks [W/(m.K)]. */
  readonly low: Conductivity;
  /** The lowest that a handbook recommends; where none does, the least conductivity [W/(m.K)]. */
  readonly recommended: Conductivity;
  /** Greatest conductivity of all handbooks [W/(m.K)]. */
  readonly high: Conductivity;
  /** Least heat capacity of all handbooks; absent where none has one [J/(m3.K)]. */
  readonly heatCapacityLow?: HeatCapacity;
  /** Greatest heat capacity of all handbooks; absent where none has one [J/(m3.K)]. */
  readonly heatCapacityHigh?: HeatCapacity;
  /** What each handbook has. */
  readonly values: readonly HandbookValue[];
  /** For contrast, what a code for the heat loss of buried pipes takes, high on purpose; never to size with; absent where it has none [W/(m.K)]. */
  readonly heatLossPractice?: Conductivity;
}

const MEGA = 1e6;

/** Shape of {@link HandbookConductivity}, the sources of its values aside. */
export const handbookConductivityShape: Shape<Omit<HandbookConductivity, 'values'> & { readonly values: readonly Omit<HandbookValue, 'source'>[] }> =
  {
    material: HANDBOOK_MATERIALS,
    state: HANDBOOK_STATES,
    low: 'conductivity',
    recommended: 'conductivity',
    high: 'conductivity',
    heatCapacityLow: { optional: 'heat capacity' },
    heatCapacityHigh: { optional: 'heat capacity' },
    values: {
      list: {
        low: { optional: 'conductivity' },
        recommended: { optional: 'conductivity' },
        high: { optional: 'conductivity' },
        heatCapacityLow: { optional: 'heat capacity' },
        heatCapacityHigh: { optional: 'heat capacity' },
      },
    },
    heatLossPractice: { optional: 'conductivity' },
  };

/**
 * Thermal conductivity of a soil by a word, from handbooks.
 *
 * Handbooks differ, and a dry soil is a third of a wet one; the value to design with is the lowest that one of them recommends, never
 * the middle between dry and saturated.
 *
 * @param question - material and state
 * @returns least, recommended and greatest conductivity [W/(m.K)], heat capacity [J/(m3.K)] and each handbook's own
 * @throws InputError when no handbook has the material in the state; the hint lists those it has
 * @remarks
 * Sources: each value names its own. Checked line by line against the tables as transcribed.
 *
 * Invariants: low ≤ recommended ≤ high.
 * @example
 * ```ts @import.meta.vitest
 * const { recommended, values } = handbookConductivity({ material: 'sand', state: 'moist' });
 * expect(recommended).toBe(1.4);
 * expect(values[0]?.source).toBe('vdi4640of2010');
 * ```
 */
export function handbookConductivity({ material, state }: HandbookQuestion): HandbookConductivity {
  demandChoice('material', material, HANDBOOK_MATERIALS);
  demandChoice('state', state, HANDBOOK_STATES);
  const rows = HANDBOOK_ROWS.filter((row) => row.materials.includes(material) && row.state === state);
  if (rows.length === 0) refuseState(material, state);
  const values: readonly HandbookValue[] = rows.map(valueOf);
  const numbers = rows.flatMap(({ low, recommended, high }) => [low, recommended, high]).filter((value) => value !== undefined);
  const recommended = rows.flatMap((row) => row.recommended ?? []);
  const low = Math.min(...numbers);
  const capacities = rows.flatMap(({ heatCapacity }) => heatCapacity ?? []);
  const heatLoss = HEAT_LOSS_ROWS.find((row) => row.material === material && row.state === state);
  return {
    material,
    state,
    low,
    recommended: recommended.length === 0 ? low : Math.min(...recommended),
    high: Math.max(...numbers),
    ...(capacities.length === 0 ? {} : { heatCapacityLow: Math.min(...capacities) * MEGA, heatCapacityHigh: Math.max(...capacities) * MEGA }),
    values,
    ...(heatLoss === undefined ? {} : { heatLossPractice: heatLoss.conductivity }),
  } as HandbookConductivity;
}

/** What a row says, in the fixed units, without what it leaves open. */
function valueOf({ low, recommended, high, heatCapacity, source }: HandbookRow): HandbookValue {
  return {
    ...(low === undefined ? {} : { low }),
    ...(recommended === undefined ? {} : { recommended }),
    ...(high === undefined ? {} : { high }),
    ...(heatCapacity === undefined ? {} : { heatCapacityLow: heatCapacity[0] * MEGA, heatCapacityHigh: heatCapacity[1] * MEGA }),
    source,
  } as HandbookValue;
}

function refuseState(material: HandbookMaterial, state: HandbookState): never {
  const states = [...new Set(HANDBOOK_ROWS.filter(({ materials }) => materials.includes(material)).map((row) => row.state))];
  throw new InputError({
    code: 'unknown-choice',
    argument: 'state',
    value: state,
    allowed: `${quotedChoices(states)} (for ${material})`,
  });
}
