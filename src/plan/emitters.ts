import type { BuildingSignatures } from '../building/index.js';
import { demandObject, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { checkEmitters, type EmitterCheck, type HeatPump, heatingCurve, requiredSupplyShape } from '../heat-pump/index.js';
import { joinedShape } from '../states/index.js';
import type { Shape, Temperature } from '../units/index.js';
import type { LoopInput } from './loop-input.js';

/** Emitters beside the water that the unit supplies at design. */
export interface EmittersAtDesign extends Omit<EmitterCheck, 'findings'> {
  /** Warmest water there is at design [degC]. */
  readonly availableSupply: Temperature;
}

/** Shape of {@link EmittersAtDesign}. */
export const emittersAtDesignShape: Shape<EmittersAtDesign> = /* @__PURE__ */ joinedShape(requiredSupplyShape, {
  availableSupply: 'temperature',
  emittedHeat: 'power',
  metShare: 'fraction',
  alternatives: { list: { outputFactor: 'ratio', loadFactor: 'ratio', requiredSupply: 'temperature', cop: { optional: 'ratio' } } },
});

/**
 * Whether the emitters give the design load with the water that is supplied.
 *
 * @param input - the whole input
 * @param building - lines of the house
 * @param unit - the heat pump
 * @returns the check with its findings; nothing where no emitters are given
 * @throws InputError with the place in the input; `missing` where supply or indoor temperature are not told
 */
export function emittersOf(
  { emitters, heatPump, building: { heating } }: LoopInput,
  { heatingForSizing }: BuildingSignatures,
  { waterSide, lowestEntering }: HeatPump,
): { readonly emitters: EmittersAtDesign; readonly findings: readonly Finding[] } | undefined {
  if (emitters === undefined) return undefined;
  demandObject('emitters', emitters);
  const { supplyControl, highestSupply = Infinity } = heatPump;
  if (supplyControl === undefined) throw missing('heatPump.supplyControl', 'the water that the unit supplies');
  if (heating.indoor === undefined) throw missing('building.heating.indoor', 'the indoor temperature');
  const { indoor } = heating;
  const availableSupply = Math.min(heatingCurve(supplyControl).designSupply, highestSupply) as Temperature;
  const { waterSpread, ...rating } = emitters;
  const { findings, ...check } = atInput(() =>
    checkEmitters(
      { emitters: rating, load: heatingForSizing.loadAtDesign, indoor, waterSpread, availableSupply },
      waterSide && { map: waterSide.map, enteringFluid: lowestEntering },
    ),
  );
  return { emitters: { ...check, availableSupply }, findings };
}

/** Where the parts of the check stand in the input. */
const PLACES: Readonly<Record<string, string>> = {
  waterSpread: 'emitters.waterSpread',
  load: 'emitters.ratedOutput',
  indoor: 'building.heating.indoor',
  availableSupply: 'heatPump.supplyControl',
};

function atInput<T>(run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const { code, argument, value, allowed, hint } = error;
    throw new InputError({ code, argument: PLACES[argument] ?? argument, value, allowed, hint });
  }
}

const missing = (argument: string, allowed: string): InputError =>
  new InputError({ code: 'missing', argument, value: undefined, allowed, hint: 'emitters are checked against it' });
