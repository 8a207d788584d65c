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
  /** Share of each month that the unit runs, January first; hot water counts as so much running for the house as takes the same heat from the ground. */
  readonly runFractions: readonly RunFraction[];
  /** Month in which the house begins to need the unit, 1 to 12. */
  readonly startMonth: number;
  /** Share of the time that the unit runs in weather as cold, or as hot, as the design load is for, hot water counted likewise. */
  readonly shareAtDesign: RunFraction;
}
