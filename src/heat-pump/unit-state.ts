import type { Conductance, ElectricPower, Power, Ratio, Shape, Temperature } from '../units/index.js';

/** The unit while it runs, at one entering fluid temperature. */
export interface UnitState {
  /** Fluid entering the heat pump [degC]. */
  readonly enteringFluid: Temperature;
  /** Heating or cooling capacity [W]. */
  readonly capacity: Power;
  /** Electric input [W]. */
  readonly power: ElectricPower;
  /** Capacity over electric input [1]. */
  readonly cop: Ratio;
  /** Heat from the ground in heating, to the ground in cooling [W]. */
  readonly groundHeat: Power;
  /** Change of the capacity per kelvin of entering fluid [W/K]. */
  readonly capacitySlope: Conductance;
  /** Change of the electric input per kelvin of entering fluid [W/K]. */
  readonly powerSlope: Conductance;
  /** Change of the ground heat per kelvin of entering fluid [W/K]. */
  readonly groundHeatSlope: Conductance;
}

/** Shape of {@link UnitState}. */
export const unitStateShape: Shape<UnitState> = {
  enteringFluid: 'temperature',
  capacity: 'power',
  power: 'electric power',
  cop: 'ratio',
  groundHeat: 'power',
  capacitySlope: 'conductance',
  powerSlope: 'conductance',
  groundHeatSlope: 'conductance',
};
