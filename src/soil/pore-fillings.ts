import { demand } from '../errors/index.js';
import type { Conductivity, Temperature } from '../units/index.js';

/** Freezing point of water in kelvin, the reference temperature of the equation of water [K] and its conductivity there [W/(m.K)]. */
const ZERO_CELSIUS = 273.15;
const REFERENCE = 298.15;
const AT_REFERENCE = 0.6065;

/**
 * Thermal conductivity of liquid water.
 *
 * No model of soil here takes it with the temperature: each was fitted with one number, 0.57 (Johansen), 0.594 (Lu, at 20 °C) or 0.60
 * (Côté and Konrad), and holds only with that. Pores of warm moist soil conduct better than this, by vapour that moves.
 *
 * @param temperature - of the water, 0 to 96.85 [degC]
 * @returns conductivity [W/(m.K)]
 * @throws InputError when the temperature is out of range
 * @remarks
 * k / 0.6065 = −1.48445 + 4.12292 τ − 1.63866 τ², τ = T / 298.15 K. Source: `ramires1995`. Checked against the releases of the
 * international association for steam (`iapwsWater`), from which it differs by 0.3 % at most up to 60 °C; the polynomial that soil practice
 * has instead (`campbell1994`) lies 0.6 % below.
 *
 * Invariant: rises with temperature.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('../units/index.js');
 * expect(waterConductivity(celsius(10))).toBeCloseTo(0.578, 3);
 * ```
 */
export function waterConductivity(temperature: Temperature): Conductivity {
  demand('temperature', 'temperature', temperature, { atLeast: 0, atMost: 96.85 });
  const reduced = (temperature + ZERO_CELSIUS) / REFERENCE;
  return (AT_REFERENCE * (-1.48445 + 4.12292 * reduced - 1.63866 * reduced ** 2)) as Conductivity;
}

/**
 * Thermal conductivity of ice.
 *
 * Models of soil take one number, 2.2 (Johansen) or 2.24 (Côté and Konrad); sources lie 3 % apart.
 *
 * @param temperature - of the ice, −60 to 0 [degC]
 * @returns conductivity [W/(m.K)]
 * @throws InputError when the temperature is out of range
 * @remarks
 * k = 2.164 − 0.0112 T. Source: `permafrostToolbox`. Checked against the numbers of `johansen1975` and `coteKonrad2005`.
 *
 * Invariant: falls with temperature.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('../units/index.js');
 * expect(iceConductivity(celsius(-5))).toBeCloseTo(2.22, 2);
 * ```
 */
export function iceConductivity(temperature: Temperature): Conductivity {
  demand('temperature', 'temperature', temperature, { atLeast: -60, atMost: 0 });
  return (2.164 - 0.0112 * temperature) as Conductivity;
}

/**
 * Thermal conductivity of dry air.
 *
 * Air in the pores of moist soil carries more by vapour that evaporates on the warm and condenses on the cold side.
 *
 * @param temperature - of the air, −40 to 100 [degC]
 * @returns conductivity [W/(m.K)]
 * @throws InputError when the temperature is out of range
 * @remarks
 * k = 0.024 + 7.73e-5 T − 2.6e-8 T². Source: `campbell1994`. Invariant: rises with temperature.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('../units/index.js');
 * expect(airConductivity(celsius(20))).toBeCloseTo(0.0255, 4);
 * ```
 */
export function airConductivity(temperature: Temperature): Conductivity {
  demand('temperature', 'temperature', temperature, { atLeast: -40, atMost: 100 });
  return (0.024 + 7.73e-5 * temperature - 2.6e-8 * temperature ** 2) as Conductivity;
}
