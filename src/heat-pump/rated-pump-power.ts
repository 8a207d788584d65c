import { demand, demandChoice } from '../errors/index.js';
import type { ElectricPower, Flow, Fraction, Pressure, Shape } from '../units/index.js';

/** By which rule a rating counts the work of moving fluid or air. */
export type PumpConvention = 'ISO 13256' | 'closed loop before 2000';

/** A flow that a rating counts by convention. */
export interface RatedPumpInput {
  /** The rule. */
  readonly convention: PumpConvention;
  /** Flow of fluid or air, 1e-6 to 100 [m3/s]. */
  readonly flow: Flow;
  /** Pressure drop that the rule counts, 0 to 2e6: of the unit alone by ISO 13256, with 17 ft of water for the loop by the older rule [Pa]. */
  readonly pressureDrop: Pressure;
}

/** The power that a rating counts. */
export interface RatedPump {
  /** Electric power by the rule [W]. */
  readonly electricPower: ElectricPower;
  /** Efficiency that the rule stands for [1]. */
  readonly pumpEfficiency: Fraction;
}

/** Shape of {@link RatedPumpInput}. */
export const ratedPumpInputShape: Shape<RatedPumpInput> = {
  convention: ['ISO 13256', 'closed loop before 2000'],
  flow: 'flow',
  pressureDrop: 'pressure',
};

/** Shape of {@link RatedPump}. */
export const ratedPumpShape: Shape<RatedPump> = { electricPower: 'electric power', pumpEfficiency: 'fraction' };

/**
 * What each rule takes the pump to be. ISO: flow in L/s times pascal over 300. Older: 0.8 W for each gpm and foot of water, which are
 * 6.30901964e-5 m3/s times 2989.06692 Pa, so 0.188581 W of water power [1].
 */
const EFFICIENCY = { 'ISO 13256': 0.3, 'closed loop before 2000': 0.23572602379442884 } as const;

/**
 * Electric power that a rating counts for a flow through a pressure drop.
 *
 * By convention, not by any pump: a small wet-rotor circulator of fixed speed has an efficiency of 0.1 to 0.25, so the real one often draws more.
 *
 * @param input - rule, flow [m3/s] and pressure drop [Pa]
 * @returns electric power [W] and the efficiency of the rule [1]
 * @throws InputError when a number is outside its range
 * @remarks
 * Sources: `iso13256`; `closedLoopPenalty`, said there to be about 25 % and in fact 23.57 %. Checked: 0.567 L/s through 30 kPa, 9 gpm through 17 ft. Invariants:
 * proportional to flow and to pressure drop.
 * @example
 * ```ts @import.meta.vitest
 * const { kilopascals, litresPerSecond } = await import('../units/index.js');
 * const { electricPower } = ratedPumpPower({ convention: 'ISO 13256', flow: litresPerSecond(0.567), pressureDrop: kilopascals(30) });
 * expect(electricPower).toBeCloseTo(56.7, 9);
 * ```
 */
export function ratedPumpPower({ convention, flow, pressureDrop }: RatedPumpInput): RatedPump {
  demandChoice('convention', convention, ['ISO 13256', 'closed loop before 2000']);
  demand('flow', 'flow', flow, { atLeast: 1e-6, atMost: 100 });
  demand('pressureDrop', 'pressure', pressureDrop, { atLeast: 0, atMost: 2e6 });
  const pumpEfficiency = EFFICIENCY[convention];
  return { electricPower: ((flow * pressureDrop) / pumpEfficiency) as ElectricPower, pumpEfficiency: pumpEfficiency as Fraction };
}
