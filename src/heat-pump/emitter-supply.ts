import { demand, InputError, locate } from '../errors/index.js';
import type { Conductance, Power, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { type EmitterRating, emitterRatingShape, type ReadEmitter, readEmitter } from './emitter.js';

/** What {@link requiredSupply} needs. */
export interface RequiredSupplyInput {
  /** What the emitters are rated for. */
  readonly emitters: EmitterRating;
  /** Heat that they have to give, 1 to 1e8 [W]. */
  readonly load: Power;
  /** Room, 5 to 35 [degC]. */
  readonly indoor: Temperature;
  /** Supply minus return at that load, 0 to 40; this or the heat capacity rate [K]. */
  readonly waterSpread?: TemperatureDifference;
  /** Heat that the flow carries per kelvin, 1 to 1e9 [W/K]. */
  readonly heatCapacityRate?: Conductance;
}

/** Shape of {@link RequiredSupplyInput}. */
export const requiredSupplyInputShape: Shape<RequiredSupplyInput> = {
  emitters: emitterRatingShape,
  load: 'power',
  indoor: 'temperature',
  waterSpread: { optional: 'temperature difference' },
  heatCapacityRate: { optional: 'conductance' },
};

/** The water that a load asks of emitters. */
export interface RequiredSupply {
  /** Water that has to enter them [degC]. */
  readonly requiredSupply: Temperature;
  /** Water that leaves them then [degC]. */
  readonly returnTemperature: Temperature;
  /** Mean excess temperature over the room [K]. */
  readonly meanExcess: TemperatureDifference;
}

/** Shape of {@link RequiredSupply}. */
export const requiredSupplyShape: Shape<RequiredSupply> = {
  requiredSupply: 'temperature',
  returnTemperature: 'temperature',
  meanExcess: 'temperature difference',
};

/** No house is heated with hotter water; a bound against emitters far too small [degC]. */
const HOTTEST = 150;

/**
 * Supply temperature at which emitters give a load.
 *
 * @param input - emitters, load [W], room [degC], and the spread [K] or the heat capacity rate of the flow [W/K]
 * @returns supply and return [degC], mean excess [K]
 * @throws InputError when a value is impossible, spread and flow are both given or neither, the flow is too small for the load, or the supply would be above 150 °C
 * @remarks
 * Mean excess = rated mean excess · (load/rated heat)^(1/exponent), and then in closed form: with the logarithmic mean m and the spread d, supply − room = d/(1 − e^(−d/m)).
 * Source: `en442Emitters`. Invariants: {@link emitterOutput} with these temperatures gives the load back; rises with load, room and spread, falls with the rated heat.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kelvinDifference, kilowatts } = await import('../units/index.js');
 * const ratedWater = { supplyTemperature: celsius(75), returnTemperature: celsius(65), indoor: celsius(20) };
 * const emitters = { emitter: 'radiator', ratedOutput: kilowatts(16), ratedWater } as const;
 * const needed = requiredSupply({ emitters, load: kilowatts(8), indoor: celsius(20), waterSpread: kelvinDifference(8) });
 * expect(needed.requiredSupply).toBeCloseTo(53.42, 2);
 * expect(needed.returnTemperature).toBeCloseTo(45.42, 2);
 * ```
 */
export function requiredSupply({ emitters, load, indoor, waterSpread, heatCapacityRate }: RequiredSupplyInput): RequiredSupply {
  const emitter = locate('emitters', () => readEmitter(emitters));
  demand('load', 'power', load, { atLeast: 1, atMost: 1e8 });
  demand('indoor', 'temperature', indoor, { atLeast: 5, atMost: 35 });
  const spread = spreadOf(load, waterSpread, heatCapacityRate);
  const { excess, supplied } = suppliedExcess(emitter, load, spread);
  if (!(supplied > spread)) refuseCold(spread, excess, heatCapacityRate);
  if (!(indoor + supplied <= HOTTEST)) refuseHot(load, indoor + supplied);
  return {
    requiredSupply: (indoor + supplied) as Temperature,
    returnTemperature: (indoor + supplied - spread) as Temperature,
    meanExcess: excess as TemperatureDifference,
  };
}

/** Mean excess that a load takes, and the excess of the supply over the room that makes it; the return is above the room only where that exceeds the spread. */
export function suppliedExcess(emitter: ReadEmitter, load: number, spread: number): { readonly excess: number; readonly supplied: number } {
  const excess = emitter.ratedExcess * (load / emitter.ratedOutput) ** (1 / emitter.exponent);
  const share = spread / excess;
  // d/(1 − e^(−d/m)) → m + d/2 where the spread is nothing.
  const supplied = emitter.excessMean === 'arithmetic' || share < 1e-8 ? excess + spread / 2 : spread / -Math.expm1(-share);
  return { excess, supplied };
}

function spreadOf(load: number, waterSpread: number | undefined, heatCapacityRate: number | undefined): number {
  if (waterSpread !== undefined) demand('waterSpread', 'temperature difference', waterSpread, { atLeast: 0, atMost: 40 });
  if (heatCapacityRate !== undefined) demand('heatCapacityRate', 'conductance', heatCapacityRate, { atLeast: 1, atMost: 1e9 });
  if (waterSpread !== undefined && heatCapacityRate !== undefined) {
    throw new InputError({ code: 'impossible', argument: 'heatCapacityRate', value: 'spread and flow', allowed: 'one of the two' });
  }
  if (waterSpread !== undefined) return waterSpread;
  if (heatCapacityRate !== undefined) return load / heatCapacityRate;
  throw new InputError({ code: 'missing', argument: 'waterSpread', value: undefined, allowed: 'a spread, or the heat capacity rate of the flow' });
}

function refuseCold(spread: number, excess: number, heatCapacityRate: number | undefined): never {
  const allowed = `a spread that leaves the return above the room, with a mean excess of ${excess.toPrecision(4)} K`;
  const argument = heatCapacityRate === undefined ? 'waterSpread' : 'heatCapacityRate';
  throw new InputError({ code: 'impossible', argument, value: { kind: 'temperature difference', value: spread }, allowed });
}

function refuseHot(load: number, supply: number): never {
  throw new InputError({
    code: 'impossible',
    argument: 'load',
    value: { kind: 'power', value: load },
    allowed: `a load that water of ${String(HOTTEST)} degC at most carries into these emitters; it would take ${supply.toPrecision(4)} degC`,
    hint: 'the heat of one room may have been put beside the load of the house',
  });
}
