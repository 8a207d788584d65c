import { demand, InputError } from '../errors/index.js';
import type { Shape, Temperature, TemperatureDifference } from '../units/index.js';

/** The coldest that the fluid gets in the design, and the margins of practice below it. */
export interface ColdestFluid {
  /** Lowest temperature at which the fluid enters the heat pump [degC]. */
  readonly lowestEntering: Temperature;
  /** Lowest temperature at which it leaves the heat pump [degC]. */
  readonly lowestLeaving: Temperature;
  /** Margin below the entering fluid; 8.3 K (15 °F) when left out [K]. */
  readonly belowEntering?: TemperatureDifference;
  /** Margin below the leaving fluid; 5.6 K (10 °F) when left out [K]. */
  readonly belowLeaving?: TemperatureDifference;
}

/** Down to where the fluid must be free of ice, and which rule says so. */
export interface ProtectionTemperature {
  /** Freezing point to reach [degC]. */
  readonly protectTo: Temperature;
  /** The rule that sets it. */
  readonly governedBy: 'entering fluid' | 'leaving fluid';
  /** The margin in it, below the temperature that governs [K]. */
  readonly margin: TemperatureDifference;
}

/** Shape of {@link ProtectionTemperature}. */
export const protectionTemperatureShape: Shape<ProtectionTemperature> = {
  protectTo: 'temperature',
  governedBy: ['entering fluid', 'leaving fluid'],
  margin: 'temperature difference',
};

/** A difference in the Fahrenheit steps of practice. */
const fahrenheitSteps = (steps: number): TemperatureDifference => (steps / 1.8) as TemperatureDifference;

/**
 * Temperature down to which a loop fluid must stay free of ice.
 *
 * The refrigerant, and with it the wall of the evaporator, runs several kelvin colder than the fluid leaving it. The margin stands
 * here and only here: tables of protection temperatures hide another, so do not add theirs.
 *
 * @param coldest - coldest entering and leaving fluid [degC], margins [K]
 * @returns the colder of the two rules
 * @throws InputError when a number is impossible or the leaving fluid is warmer than the entering
 * @remarks Source: `freezeMarginPractice`. Both rules are in use and nearly agree: 30 °F entering and 4.0 K of range give −9.4 and −9.6 °C.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, fahrenheit } = await import('../units/index.js');
 * const target = protectionTemperature({ lowestEntering: fahrenheit(30), lowestLeaving: celsius(-4) });
 * expect(target.protectTo).toBeCloseTo(-9.56, 2);
 * expect(target.governedBy).toBe('leaving fluid');
 * ```
 */
export function protectionTemperature({
  lowestEntering,
  lowestLeaving,
  belowEntering = fahrenheitSteps(15),
  belowLeaving = fahrenheitSteps(10),
}: ColdestFluid): ProtectionTemperature {
  demand('lowestEntering', 'temperature', lowestEntering, { atLeast: -60, atMost: 100 });
  demand('lowestLeaving', 'temperature', lowestLeaving, { atLeast: -60, atMost: 100 });
  demand('belowEntering', 'temperature difference', belowEntering, { atLeast: 0, atMost: 50 });
  demand('belowLeaving', 'temperature difference', belowLeaving, { atLeast: 0, atMost: 50 });
  if (lowestLeaving > lowestEntering) {
    throw new InputError({
      code: 'impossible',
      argument: 'lowestLeaving',
      value: { kind: 'temperature', value: lowestLeaving },
      allowed: `at most the entering ${String(lowestEntering)} degC`,
      hint: 'in heating the heat pump cools the fluid; entering and leaving may be interchanged',
    });
  }
  const byEntering = lowestEntering - belowEntering;
  const byLeaving = lowestLeaving - belowLeaving;
  return (
    byEntering < byLeaving
      ? { protectTo: byEntering, governedBy: 'entering fluid', margin: belowEntering }
      : { protectTo: byLeaving, governedBy: 'leaving fluid', margin: belowLeaving }
  ) as ProtectionTemperature;
}
