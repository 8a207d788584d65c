import { antifreezeForProtection, type Fluid, fluidProperties, protectionTemperature } from '../fluid/index.js';
import type { HeatPump } from '../heat-pump/index.js';
import type { FluidState } from '../states/index.js';
import type { MassFraction, Shape, Temperature, TemperatureDifference, VolumeFraction } from '../units/index.js';

/** The fluid the loop is filled with, strong enough for the coldest that it may leave the heat pump. */
export interface LoopFluid {
  /** The fluid. */
  readonly fluid: Fluid;
  /** Mass share of antifreeze [kg/kg]. */
  readonly massFraction: MassFraction;
  /** Volume share of antifreeze at 20 °C, in whole per cent [m3/m3]. */
  readonly volumeFraction: VolumeFraction;
  /** Where it freezes [degC]. */
  readonly freezingPoint: Temperature;
  /** Freezing point asked for: the unit's lowest leaving fluid less the margin; absent for water [degC]. */
  readonly protectTo?: Temperature;
  /** The margin [K]. */
  readonly margin?: TemperatureDifference;
  /** What set the share. */
  readonly governedBy: 'protection' | 'inhibitor floor' | 'water';
}

/** Shape of {@link LoopFluid}. */
export const loopFluidShape: Shape<LoopFluid> = {
  fluid: ['water', 'propylene-glycol'],
  massFraction: 'mass fraction',
  volumeFraction: 'volume fraction',
  freezingPoint: 'temperature',
  protectTo: { optional: 'temperature' },
  margin: { optional: 'temperature difference' },
  governedBy: ['protection', 'inhibitor floor', 'water'],
};

/**
 * The fluid of the loop.
 *
 * Where the unit has no stop on the leaving fluid, the leaving fluid at the lowest entering one takes its place; it depends a little
 * on the mixture, and the mixture on it.
 *
 * @param fluid - what the loop is to be filled with
 * @param unit - the heat pump with its limits
 * @returns the mixture and what set it
 */
export function loopFluid(fluid: Fluid, unit: HeatPump): LoopFluid {
  const { lowestEntering, lowestLeaving, heating, sourceFlow } = unit;
  if (fluid === 'water') {
    return { fluid, massFraction: 0 as MassFraction, volumeFraction: 0 as VolumeFraction, freezingPoint: 0 as Temperature, governedBy: 'water' };
  }
  let mixture = mixtureFor(fluid, lowestEntering, lowestLeaving ?? lowestEntering);
  for (let round = 0; lowestLeaving === undefined && round < ROUNDS; round += 1) {
    const { density, specificHeat } = stateAt(mixture, lowestEntering);
    const leaving = lowestEntering - heating.groundHeatAt(lowestEntering) / (sourceFlow * density * specificHeat);
    mixture = mixtureFor(fluid, lowestEntering, leaving as Temperature);
  }
  return mixture;
}

/** Rounds between mixture and leaving fluid; whole per cent settle after two. */
const ROUNDS = 4;

function mixtureFor(fluid: Fluid, lowestEntering: Temperature, lowestLeaving: Temperature): LoopFluid {
  const { protectTo, margin } = protectionTemperature({ lowestEntering, lowestLeaving });
  const { massFraction, volumeFraction, freezingPoint, governedBy } = antifreezeForProtection({ fluid, protectTo, freezingRule: 'warmest source' });
  return { fluid, massFraction, volumeFraction, freezingPoint, protectTo, margin, governedBy };
}

/**
 * Properties of the loop's fluid.
 *
 * @param fluid - the mixture
 * @param temperature - [degC]
 * @returns its state
 */
export function stateAt({ fluid, massFraction }: LoopFluid, temperature: Temperature): FluidState {
  return fluidProperties({ fluid, massFraction, temperature });
}
