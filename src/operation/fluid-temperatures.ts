import { demand, demandChoice, demandObject, InputError } from '../errors/index.js';
import type { FluidState } from '../states/index.js';
import type { Conductance, Flow, Power, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import type { LoadMode } from './margin.js';

/** What {@link fluidTemperatures} needs. */
export interface FluidTemperaturesInput {
  /** Heating cools the fluid in the heat pump, cooling warms it. */
  readonly mode: LoadMode;
  /** Fluid entering the heat pump, leaving the loop, −60 to 100 [degC]. */
  readonly entering: Temperature;
  /** Heat between fluid and heat pump while it runs, 0 to 1e8 [W]. */
  readonly groundHeat: Power;
  /** Flow of the whole loop, 1e-6 to 1 [m3/s]. */
  readonly flow: Flow;
  /** The fluid. */
  readonly fluid: Pick<FluidState, 'density' | 'specificHeat'>;
}

/** The three temperatures that are all called "the fluid temperature". */
export interface FluidTemperatures {
  /** Entering the heat pump [degC]. */
  readonly entering: Temperature;
  /** Mean of entering and leaving, which the loop's length is computed with [degC]. */
  readonly mean: Temperature;
  /** Leaving the heat pump, which its freeze-protection stop watches [degC]. */
  readonly leaving: Temperature;
  /** How far the heat pump cools the fluid in heating, or warms it in cooling [K]. */
  readonly range: TemperatureDifference;
  /** Heat that the flow carries per kelvin [W/K]. */
  readonly heatCapacityRate: Conductance;
}

/** Shape of {@link FluidTemperatures}. */
export const fluidTemperaturesShape: Shape<FluidTemperatures> = {
  entering: 'temperature',
  mean: 'temperature',
  leaving: 'temperature',
  range: 'temperature difference',
  heatCapacityRate: 'conductance',
};

/** Widest range that is still a flow and not a mistake [K]. */
const WIDEST_RANGE = 60;

/**
 * Leaving and mean fluid temperature from the entering one: range = heat/(density · flow · specific heat), leaving = entering ∓ range,
 * mean half-way between.
 *
 * @param input - see {@link FluidTemperaturesInput}
 * @returns the three temperatures [degC], their range [K] and the heat capacity rate [W/K]
 * @throws InputError for a value out of its range; `impossible` when the flow is too small for the heat (range above 60 K)
 * @remarks An energy balance; checked against the constant of the trade's site rule, 500 Btu/h per gpm and °F for water (H-500). Invariants tested:
 * the range carries exactly the heat, heating and cooling mirror one another, twice the flow halves the range.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, joulesPerKilogramKelvin, kilogramsPerCubicMetre, litresPerSecond, watts } = await import('../units/index.js');
 * const { leaving, mean, range } = fluidTemperatures({
 *   mode: 'heating',
 *   entering: celsius(0),
 *   groundHeat: watts(7353),
 *   flow: litresPerSecond(0.57),
 *   fluid: { density: kilogramsPerCubicMetre(1025), specificHeat: joulesPerKilogramKelvin(3850) },
 * });
 * expect(range).toBeCloseTo(3.27, 2);
 * expect(leaving).toBe(-range);
 * expect(mean).toBe(-range / 2);
 * ```
 */
export function fluidTemperatures({ mode, entering, groundHeat, flow, fluid }: FluidTemperaturesInput): FluidTemperatures {
  demandChoice('mode', mode, ['heating', 'cooling']);
  demand('entering', 'temperature', entering, { atLeast: -60, atMost: 100 });
  demand('groundHeat', 'power', groundHeat, { atLeast: 0, atMost: 1e8 });
  demand('flow', 'flow', flow, { atLeast: 1e-6, atMost: 1 });
  demandObject('fluid', fluid);
  demand('fluid.density', 'density', fluid.density, { atLeast: 500, atMost: 2000 });
  demand('fluid.specificHeat', 'specific heat', fluid.specificHeat, { atLeast: 500, atMost: 10_000 });
  const heatCapacityRate = fluid.density * flow * fluid.specificHeat;
  const range = groundHeat / heatCapacityRate;
  if (range > WIDEST_RANGE) {
    throw new InputError({
      code: 'impossible',
      argument: 'flow',
      value: { kind: 'flow', value: flow },
      allowed: `at least ${String(groundHeat / (WIDEST_RANGE * fluid.density * fluid.specificHeat))} m3/s for this heat`,
      hint: `the fluid would change by ${String(range)} K; 3 to 6 K is usual`,
    });
  }
  const sign = mode === 'heating' ? -1 : 1;
  return {
    entering,
    mean: (entering + (sign * range) / 2) as Temperature,
    leaving: (entering + sign * range) as Temperature,
    range: range as TemperatureDifference,
    heatCapacityRate: heatCapacityRate as Conductance,
  };
}
