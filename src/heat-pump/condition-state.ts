import { joinedShape } from '../states/index.js';
import type { Conductance, Ratio, Shape, Temperature } from '../units/index.js';
import { type UnitState, unitStateShape } from './unit-state.js';

/** What a unit runs at. */
export interface UnitConditions {
  /** Fluid entering the heat pump [degC]. */
  readonly enteringFluid: Temperature;
  /** Water supplied, or air entering the coil, as the rating points state it; needed where they state several [degC]. */
  readonly loadSide?: Temperature;
  /** Flow on the loop side over the rated one; 1 when left out [1]. */
  readonly flowRatio?: Ratio;
}

/** Shape of {@link UnitConditions}. */
export const unitConditionsShape: Shape<UnitConditions> = {
  enteringFluid: 'temperature',
  loadSide: { optional: 'temperature' },
  flowRatio: { optional: 'ratio' },
};

/** The unit while it runs, at one entering fluid, load side and flow. */
export interface ConditionState extends UnitState {
  /** Water supplied, or air entering the coil; absent where the rating points state none [degC]. */
  readonly loadSide?: Temperature;
  /** Flow on the loop side over the rated one [1]. */
  readonly flowRatio: Ratio;
  /** Change of the capacity per kelvin on the load side [W/K]. */
  readonly capacityByLoadSide: Conductance;
  /** Change of the electric input per kelvin on the load side [W/K]. */
  readonly powerByLoadSide: Conductance;
  /** Change of the ground heat per kelvin on the load side [W/K]. */
  readonly groundHeatByLoadSide: Conductance;
}

/** Shape of {@link ConditionState}. */
export const conditionStateShape: Shape<ConditionState> = /* @__PURE__ */ joinedShape(unitStateShape, {
  loadSide: { optional: 'temperature' },
  flowRatio: 'ratio',
  capacityByLoadSide: 'conductance',
  powerByLoadSide: 'conductance',
  groundHeatByLoadSide: 'conductance',
});
