import { type UnitState, unitStateShape } from '../heat-pump/index.js';
import type { LoadMode } from '../operation/index.js';
import type { RunFraction, Shape } from '../units/index.js';
import { type DesignFluid, designFluidShape } from './design-fluid.js';

/** The unit at the fluid temperatures the loop is designed for, in one mode. */
export interface UnitAtDesign {
  /** Heating or cooling. */
  readonly mode: LoadMode;
  /** Fluid entering and leaving the unit. */
  readonly fluid: DesignFluid;
  /** What the unit does there. */
  readonly performance: UnitState;
}

/** Shape of {@link UnitAtDesign}. */
export const unitAtDesignShape: Shape<UnitAtDesign> = { mode: ['heating', 'cooling'], fluid: designFluidShape, performance: unitStateShape };

/** One mode of running as the loop sees it: the unit at design and the share of each month it runs. */
export interface ModeDesign {
  /** The unit at design. */
  readonly unit: UnitAtDesign;
  /** Share of each month that the unit runs, January first. */
  readonly runFractions: readonly RunFraction[];
  /** Share of the time that the unit runs in weather as cold, or as hot, as the design load is for. */
  readonly shareAtDesign: RunFraction;
}
