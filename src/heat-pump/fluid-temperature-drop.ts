import { demand } from '../errors/index.js';
import type { Flow, HeatCapacity, Power, Shape, TemperatureDifference } from '../units/index.js';

/** Heat that a flow takes up or gives off in the unit. */
export interface FluidDropInput {
  /** Heat from or to the ground, 0 to 1e8 [W]. */
  readonly groundHeat: Power;
  /** Flow on the loop side, 1e-6 to 1 [m3/s]. */
  readonly flow: Flow;
  /** Density times specific heat of the fluid, 1e6 to 5e6: 4.18e6 for water, less with antifreeze [J/(m3.K)]. */
  readonly heatCapacity: HeatCapacity;
}

/** Shape of {@link FluidDropInput}. */
export const fluidDropInputShape: Shape<FluidDropInput> = { groundHeat: 'power', flow: 'flow', heatCapacity: 'heat capacity' };

/**
 * How far the fluid falls through the unit in heating, or rises in cooling.
 *
 * With it the leaving fluid is told from the entering one, and a table that gives the leaving fluid is turned round.
 *
 * @param input - ground heat [W], flow [m3/s], heat capacity by volume [J/(m3.K)]
 * @returns entering minus leaving in heating, leaving minus entering in cooling [K]
 * @throws InputError when a number is outside its range
 * @remarks
 * Exact: heat over flow and heat capacity. The trade's 500 Btu/h per gpm and degF is water at about 60 °F; antifreeze has 3 to 10 % less. Invariants: proportional to
 * the heat, inverse to the flow.
 * @example
 * ```ts @import.meta.vitest
 * const { btuPerHour, fahrenheitDifference, gallonsPerMinute, megajoulesPerCubicMetreKelvin } = await import('../units/index.js');
 * const drop = fluidTemperatureDrop({ groundHeat: btuPerHour(24_750), flow: gallonsPerMinute(9), heatCapacity: megajoulesPerCubicMetreKelvin(4.18) });
 * expect(fahrenheitDifference.of(drop)).toBeCloseTo(5.5, 1);
 * ```
 */
export function fluidTemperatureDrop({ groundHeat, flow, heatCapacity }: FluidDropInput): TemperatureDifference {
  demand('groundHeat', 'power', groundHeat, { atLeast: 0, atMost: 1e8 });
  demand('flow', 'flow', flow, { atLeast: 1e-6, atMost: 1 });
  demand('heatCapacity', 'heat capacity', heatCapacity, { atLeast: 1e6, atMost: 5e6 });
  return (groundHeat / (flow * heatCapacity)) as TemperatureDifference;
}
