import { InputError } from '../errors/index.js';
import type { ElectricPower, Power, Ratio, Shape, Temperature } from '../units/index.js';

/** The unit as a fitted form tells it, at one place. */
export interface FittedState {
  /** Fluid entering the heat pump [degC]. */
  readonly enteringFluid: Temperature;
  /** Heating or cooling capacity [W]. */
  readonly capacity: Power;
  /** Electric input [W]. */
  readonly power: ElectricPower;
  /** Capacity over electric input; it follows from the two and is never fitted [1]. */
  readonly cop: Ratio;
  /** Heat from the ground in heating, to the ground in cooling [W]. */
  readonly groundHeat: Power;
}

/** Shape of {@link FittedState}. */
export const fittedStateShape: Shape<FittedState> = {
  enteringFluid: 'temperature',
  capacity: 'power',
  power: 'electric power',
  cop: 'ratio',
  groundHeat: 'power',
};

/** The state that a capacity and an electric input make; refused where no unit is like that. */
export function fittedState(mode: 'heating' | 'cooling', enteringFluid: Temperature, capacity: number, power: number): FittedState {
  const groundHeat = mode === 'heating' ? capacity - power : capacity + power;
  if (!(Math.min(capacity, power, groundHeat) > 0)) {
    throw new InputError({
      code: 'impossible',
      argument: 'points',
      value: `a fit with ${String(capacity)} W of capacity and ${String(power)} W of electric input at ${String(enteringFluid)} degC`,
      allowed: 'points whose fit stays above zero, and in heating above the electric input',
      hint: 'capacity and power may be interchanged, in different units, or of different units',
    });
  }
  return {
    enteringFluid,
    capacity: capacity as Power,
    power: power as ElectricPower,
    cop: (capacity / power) as Ratio,
    groundHeat: groundHeat as Power,
  };
}
