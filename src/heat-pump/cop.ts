import { demand, InputError } from '../errors/index.js';
import type { Ratio, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { COP_REGRESSIONS, WATT_HOURS_PER_BTU } from './cop.data.js';

/** Where heat is taken and where it goes. */
export interface CarnotInput {
  /** Cold side, −100 to 200 [degC]. */
  readonly cold: Temperature;
  /** Warm side, warmer than the cold side, to 200 [degC]. */
  readonly warm: Temperature;
}

/** Shape of {@link CarnotInput}. */
export const carnotInputShape: Shape<CarnotInput> = { cold: 'temperature', warm: 'temperature' };

/**
 * Best COP in heating between two temperatures, after Carnot.
 *
 * Units reach about half of it between brine in and water out.
 *
 * @param between - cold and warm side [degC]
 * @returns heat over work [1]
 * @throws InputError unless the warm side is warmer, by 0.01 K or more
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('../units/index.js');
 * expect(carnotCop({ cold: celsius(0), warm: celsius(35) })).toBeCloseTo(8.804286, 6);
 * ```
 */
export function carnotCop({ cold, warm }: CarnotInput): Ratio {
  demand('cold', 'temperature', cold, { atLeast: -100, atMost: 200 });
  demand('warm', 'temperature', warm, { atLeast: -100, atMost: 200 });
  if (warm - cold < 0.01) {
    throw new InputError({
      code: 'impossible',
      argument: 'warm',
      value: { kind: 'temperature', value: warm },
      allowed: `above ${String(cold)} degC`,
    });
  }
  return ((warm + 273.15) / (warm - cold)) as Ratio;
}

/**
 * COP of a cooling rating told in Btu per watt-hour, as US tables do (EER).
 *
 * @param energyEfficiencyRatio - EER [Btu/(W.h)], 1 to 170
 * @returns cold over electricity, dimensionless [1]
 * @throws InputError when the number is outside its range
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * expect(copFromEer(ratio(17.1))).toBeCloseTo(5.0115, 4);
 * ```
 */
export function copFromEer(energyEfficiencyRatio: Ratio): Ratio {
  demand('energyEfficiencyRatio', 'ratio', energyEfficiencyRatio, { atLeast: 1, atMost: 170 });
  return (energyEfficiencyRatio * WATT_HOURS_PER_BTU) as Ratio;
}

/**
 * EER in Btu per watt-hour, as US tables tell a cooling rating, of a dimensionless COP.
 *
 * @param cop - cold over electricity, 0.3 to 50 [1]
 * @returns EER [Btu/(W.h)]
 * @throws InputError when the number is outside its range
 * @remarks Invariant: {@link copFromEer} gives the COP back.
 * @example
 * ```ts @import.meta.vitest
 * const { ratio } = await import('../units/index.js');
 * expect(eerFromCop(ratio(4.191489))).toBeCloseTo(14.302, 3);
 * ```
 */
export function eerFromCop(cop: Ratio): Ratio {
  demand('cop', 'ratio', cop, { atLeast: 0.3, atMost: 50 }, 'an EER may have been given as a COP');
  return (cop / WATT_HOURS_PER_BTU) as Ratio;
}

/**
 * COP of an average ground-source unit in heating, after the review of Staffell and others.
 *
 * A fall-back where a unit has no data yet; with {@link ruhnauCop} it spans the honest uncertainty, under 4 % at 30 to 40 K and 9 to 15 % at the ends.
 * Installed units reach about 0.85 of either.
 *
 * @param lift - water supplied minus fluid entering, 20 to 60 [K]
 * @returns heat over electricity [1]
 * @throws InputError when the lift is outside the range of the regression
 * @remarks 8.77 − 0.150 ΔT + 0.000734 ΔT². Source: `staffell2012`. The linear term is negative; a widely copied text has it positive.
 * @example
 * ```ts @import.meta.vitest
 * const { kelvinDifference } = await import('../units/index.js');
 * expect(staffellCop(kelvinDifference(40))).toBeCloseTo(3.9444, 9);
 * ```
 */
export function staffellCop(lift: TemperatureDifference): Ratio {
  return regression(lift, COP_REGRESSIONS.staffell);
}

/**
 * COP of an average ground-source unit in heating, after Ruhnau and others.
 *
 * @param lift - water supplied minus fluid entering, 15 to 60 [K]
 * @returns heat over electricity [1]
 * @throws InputError when the lift is outside the range of the regression
 * @remarks
 * 10.288 − 0.2084 ΔT + 0.0012 ΔT². Source: `ruhnau2019`, coefficients of its data file; the printed ones, rounded, are 0.06 lower at 40 K.
 * @example
 * ```ts @import.meta.vitest
 * const { kelvinDifference } = await import('../units/index.js');
 * expect(ruhnauCop(kelvinDifference(40))).toBeCloseTo(3.872, 9);
 * ```
 */
export function ruhnauCop(lift: TemperatureDifference): Ratio {
  return regression(lift, COP_REGRESSIONS.ruhnau);
}

function regression(lift: number, form: (typeof COP_REGRESSIONS)[keyof typeof COP_REGRESSIONS]): Ratio {
  const { constant, linear, square, least, most, turnsAt } = form;
  const hint = `the regression was made for that range; as a parabola it turns at ${String(turnsAt)} K and is worth nothing near there`;
  demand('lift', 'temperature difference', lift, { atLeast: least, atMost: most }, hint);
  return (constant + lift * (linear + lift * square)) as Ratio;
}
