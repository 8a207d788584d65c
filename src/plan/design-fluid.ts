import type { FluidState } from '../states/index.js';
import type { Flow, Power, Shape, Temperature, TemperatureDifference } from '../units/index.js';

/** Fluid entering and leaving the heat pump at design, and the limit that set it. */
export interface DesignFluid {
  /** Fluid entering the heat pump [degC]. */
  readonly entering: Temperature;
  /** Fluid leaving the heat pump [degC]. */
  readonly leaving: Temperature;
  /** Mean of both: the fluid in the ground [degC]. */
  readonly mean: Temperature;
  /** How far the fluid is cooled or warmed in the heat pump [K]. */
  readonly fluidRange: TemperatureDifference;
  /** The limit of the unit that set it. */
  readonly boundBy: 'entering fluid limit' | 'leaving fluid limit';
}

/** Shape of {@link DesignFluid}. */
export const designFluidShape: Shape<DesignFluid> = {
  entering: 'temperature',
  leaving: 'temperature',
  mean: 'temperature',
  fluidRange: 'temperature difference',
  boundBy: ['entering fluid limit', 'leaving fluid limit'],
};

/** How the unit and its fluid depend on the entering temperature. */
export interface UnitAndFluid {
  readonly flow: Flow;
  readonly groundHeatAt: (entering: Temperature) => Power;
  readonly stateAt: (temperature: Temperature) => FluidState;
}

/** Rounds of the fixed point; each shrinks the error by a tenth or more. */
const ROUNDS = 20;

/**
 * The coldest fluid that both limits of the unit allow: entering not below the one, leaving not below the other.
 *
 * @param unit - ground heat at an entering temperature, flow, fluid properties
 * @param lowestEntering - limit of the entering fluid [degC]
 * @param lowestLeaving - limit of the leaving fluid, where the unit stops itself, if there is one [degC]
 * @returns the design fluid in heating
 */
export function coldestFluid(unit: UnitAndFluid, lowestEntering: Temperature, lowestLeaving: Temperature | undefined): DesignFluid {
  const atLimit = rangeAt(unit, lowestEntering, -1);
  if (lowestLeaving === undefined || lowestEntering - atLimit >= lowestLeaving) return designFluid(lowestEntering, -atLimit, 'entering fluid limit');
  let range = atLimit;
  for (let round = 0; round < ROUNDS; round += 1) range = rangeAt(unit, (lowestLeaving + range) as Temperature, -1);
  return designFluid((lowestLeaving + range) as Temperature, -range, 'leaving fluid limit');
}

/**
 * The warmest fluid that the unit allows.
 *
 * @param unit - ground heat at an entering temperature, flow, fluid properties
 * @param highestEntering - limit of the entering fluid [degC]
 * @returns the design fluid in cooling
 */
export function warmestFluid(unit: UnitAndFluid, highestEntering: Temperature): DesignFluid {
  return designFluid(highestEntering, rangeAt(unit, highestEntering, 1), 'entering fluid limit');
}

/** How far the fluid is cooled or warmed in the unit: ground heat over flow · density · specific heat at the mean temperature. */
function rangeAt({ flow, groundHeatAt, stateAt }: UnitAndFluid, entering: Temperature, side: 1 | -1): number {
  const heat = groundHeatAt(entering);
  const over = (state: FluidState): number => heat / (flow * state.density * state.specificHeat);
  const first = over(stateAt(entering));
  return over(stateAt((entering + (side * first) / 2) as Temperature));
}

function designFluid(entering: Temperature, change: number, boundBy: DesignFluid['boundBy']): DesignFluid {
  return {
    entering,
    leaving: (entering + change) as Temperature,
    mean: (entering + change / 2) as Temperature,
    fluidRange: Math.abs(change) as TemperatureDifference,
    boundBy,
  };
}
