import { demand, demandObject } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Fraction, Power, Ratio, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import type { ConditionMap } from './condition-map.js';
import { emitterOutput, type EmitterRating, emitterRatingShape, LEAST_EXCESS, readEmitter } from './emitter.js';
import { type RequiredSupply, requiredSupply, suppliedExcess } from './emitter-supply.js';
import { ENTERING } from './rating-point.js';
import { demandFunction } from './staged-unit.js';
import { EXTRAPOLATED } from './unit-curves.js';

/** What {@link checkEmitters} needs. */
export interface EmitterCheckInput {
  /** What the emitters are rated for. */
  readonly emitters: EmitterRating;
  /** Heat that they have to give at design, 1 to 1e8 [W]. */
  readonly load: Power;
  /** Room, 5 to 35 [degC]. */
  readonly indoor: Temperature;
  /** Supply minus return at that load, 0 to 40 [K]. */
  readonly waterSpread: TemperatureDifference;
  /** Warmest water there is at design: what the curve sends, or the most that the unit gives, whichever is less; above the room, to 100 [degC]. */
  readonly availableSupply: Temperature;
}

/** Shape of {@link EmitterCheckInput}. */
export const emitterCheckInputShape: Shape<EmitterCheckInput> = {
  emitters: emitterRatingShape,
  load: 'power',
  indoor: 'temperature',
  waterSpread: 'temperature difference',
  availableSupply: 'temperature',
};

/** The unit that makes the water, where it is known. */
export interface EmitterCheckUnit {
  /** The unit over entering fluid and supply temperature. */
  readonly map: ConditionMap;
  /** Fluid entering it at design, −40 to 60 [degC]. */
  readonly enteringFluid: Temperature;
}

/** What other emitters, or a lower heat loss, would ask of the unit. */
export interface EmitterAlternative {
  /** Rated heat of the emitters over that of those there are [1]. */
  readonly outputFactor: Ratio;
  /** Load over that of the house as it is [1]. */
  readonly loadFactor: Ratio;
  /** Supply temperature that it needs at design [degC]. */
  readonly requiredSupply: Temperature;
  /** COP of the unit at it; absent where no unit is given or its rating points do not reach there [1]. */
  readonly cop?: Ratio;
}

/** Whether emitters give the design load. */
export interface EmitterCheck extends RequiredSupply {
  /** Heat that they give with the water there is, at the same flow [W]. */
  readonly emittedHeat: Power;
  /** The same over the load, at most 1 [1]. */
  readonly metShare: Fraction;
  /** As it is; with a quarter, a half and the whole of emitters more; with a tenth, two tenths and three tenths of the load less. One whose return would not stay above the room is left out. */
  readonly alternatives: readonly EmitterAlternative[];
  /** `emitter-short` where the load is not met. */
  readonly findings: readonly Finding[];
}

/** Own choice of what to compare: rated heat and load over those there are [1]. */
const COMPARED = [
  [1, 1],
  [1.25, 1],
  [1.5, 1],
  [2, 1],
  [1, 0.9],
  [1, 0.8],
  [1, 0.7],
] as const;

/** Less short than this is rounding [1]. */
const SHORT = 1e-9;

/**
 * Whether the emitters of a house give its design load with the water that there is, and what larger ones or a lower heat loss would do.
 *
 * Each room counts by itself: the check of the whole house holds if its emitters are spread as its heat loss is; the room with the smallest for its loss sets the curve.
 *
 * @param input - emitters, load [W], room [degC], spread [K] and warmest water [degC]
 * @param unit - map and entering fluid, for the COP
 * @returns required supply [degC], heat given [W], share of the load, alternatives and findings
 * @throws InputError as {@link requiredSupply}, or when the water is not warmer than the room
 * @remarks
 * Less load at the same flow has less spread. Source: `en442Emitters`. Invariants: short exactly where the required supply is above the available one; alternatives with more output or less load
 * need cooler water and have the better COP.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kelvinDifference, kilowatts } = await import('../units/index.js');
 * const ratedWater = { supplyTemperature: celsius(75), returnTemperature: celsius(65), indoor: celsius(20) };
 * const emitters = { emitter: 'radiator', ratedOutput: kilowatts(16), ratedWater } as const;
 * const check = checkEmitters({ emitters, load: kilowatts(8), indoor: celsius(20), waterSpread: kelvinDifference(8), availableSupply: celsius(50) });
 * expect(check.findings.map(({ code }) => code)).toEqual(['emitter-short']);
 * expect(check.metShare).toBeGreaterThan(0.86);
 * expect(check.alternatives[2]?.requiredSupply).toBeLessThan(46); // half as much again
 * ```
 */
export function checkEmitters({ emitters, load, indoor, waterSpread, availableSupply }: EmitterCheckInput, unit?: EmitterCheckUnit): EmitterCheck {
  if (unit !== undefined) demandUnit(unit);
  const needed = requiredSupply({ emitters, load, indoor, waterSpread });
  demand('availableSupply', 'temperature', availableSupply, { atLeast: indoor + 2 * LEAST_EXCESS, atMost: 100 });
  const emitter = readEmitter(emitters);
  const emitted = heatAtFlow(emitters, indoor, availableSupply, waterSpread / load);
  const short = needed.requiredSupply > availableSupply && emitted < load * (1 - SHORT);
  const metShare = (short ? emitted / load : 1) as Fraction;
  const values = { requiredSupply: needed.requiredSupply, availableSupply, metShare };
  return {
    ...needed,
    emittedHeat: emitted as Power,
    metShare,
    alternatives: COMPARED.flatMap(([outputFactor, loadFactor]) => {
      const spread = waterSpread * loadFactor;
      const { supplied } = suppliedExcess({ ...emitter, ratedOutput: emitter.ratedOutput * outputFactor }, load * loadFactor, spread);
      if (!(supplied > spread)) return [];
      const supply = (indoor + supplied) as Temperature;
      const cop = unit && copAt(unit, supply);
      return [
        { outputFactor: outputFactor as Ratio, loadFactor: loadFactor as Ratio, requiredSupply: supply, ...(cop === undefined ? {} : { cop }) },
      ];
    }),
    findings: short ? [{ code: 'emitter-short', level: 'warning', values, source: 'en442Emitters' }] : [],
  };
}

/** Heat at which emitters and water agree, with a spread that goes with the heat; the flow tells how. Halving 60 times leaves less than rounding. */
function heatAtFlow(emitters: EmitterRating, indoor: Temperature, supplyTemperature: Temperature, spreadPerHeat: number): number {
  const given = (heat: number): number => {
    const returnTemperature = Math.max(indoor + LEAST_EXCESS, supplyTemperature - heat * spreadPerHeat) as Temperature;
    return emitterOutput({ emitters, emitterWater: { supplyTemperature, returnTemperature, indoor } }).emittedHeat;
  };
  let [low, high] = [0, given(0)];
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = (low + high) / 2;
    if (given(middle) > middle) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function demandUnit(unit: EmitterCheckUnit): void {
  demandObject('unit', unit);
  demandObject('unit.map', unit.map);
  demandFunction('unit.map.at', unit.map.at);
  demand('unit.enteringFluid', 'temperature', unit.enteringFluid, ENTERING);
}

function copAt({ map, enteringFluid }: EmitterCheckUnit, loadSide: Temperature): Ratio | undefined {
  const { loadSides } = map;
  if (loadSides === undefined || loadSide < loadSides.lowest - EXTRAPOLATED || loadSide > loadSides.highest + EXTRAPOLATED) return undefined;
  if (loadSides.lowest === loadSides.highest && loadSide !== loadSides.lowest) return undefined;
  const { lowest, highest } = map.usableAt(loadSide);
  return enteringFluid < lowest || enteringFluid > highest ? undefined : map.at({ enteringFluid, loadSide }).cop;
}
