import type { Finding } from '../findings/index.js';
import type { Fraction } from '../units/index.js';
import { balanceOf, type DesuperheaterBalance, sumOfBalances } from './desuperheater-balance.js';
import { shareFindings, winterFindings } from './desuperheater-findings.js';
import { type DesuperheaterYearInput, readDesuperheaterYear } from './desuperheater-input.js';

/** A year of a unit with a desuperheater. */
export interface DesuperheaterYear {
  /** January first. */
  readonly months: readonly DesuperheaterBalance[];
  /** All of them. */
  readonly year: DesuperheaterBalance;
  /** Share of the year's hot water that comes from the desuperheater; 0 where none is wanted [1]. */
  readonly hotWaterShare: Fraction;
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/**
 * Hot water by a desuperheater through the year: made against wanted, month by month.
 *
 * Each month is taken on the mean: its heat is there as long as the compressor runs, a tank holds it until it is drawn, and what is beyond the wanted
 * stays with house or ground. In heating the house misses it, so that the unit runs longer and takes more from the ground; only a unit without time left leaves the house to
 * auxiliary heat. In a month with both modes the heat of cooling is used first. A cold spell within a month is not in it: use hours there.
 *
 * @param input - share of the condenser heat [1] and twelve months with what is wanted [J] and the unit at their temperatures [W]
 * @returns hot water by where it comes from, heat of house and ground, electricity [J]; by months and over the year
 * @throws InputError when a number is impossible, or there are not twelve months
 * @remarks
 * Heating runs (E + D)/Qh with D = min(wanted, s E/(1 − s)); ground from (Qh − P) t, to (Qc + P) t − D.
 *
 * Invariants: the four parts of the hot water add up to what is wanted; from ground + electricity + cooling = heat of house and hot water + to ground;
 * a share of 0 changes nothing; a larger share never makes less.
 * @example
 * ```ts @import.meta.vitest
 * const { days, electricKilowatts, kilowattHours, kilowatts, percent } = await import('../units/index.js');
 * const duty = { capacity: kilowatts(10), power: electricKilowatts(2.5) };
 * const month = (heat: number) => ({ time: days(30), heating: { ...duty, energy: kilowattHours(heat) }, hotWaterEnergy: kilowattHours(300) });
 * const heats = [2700, 2400, 1800, 900, 0, 0, 0, 0, 0, 900, 1800, 2700];
 * const { months, year } = desuperheaterYear({ desuperheaterShare: percent(10), months: heats.map(month) });
 * expect(kilowattHours.of(months[3]?.byHeating ?? kilowattHours(0))).toBeCloseTo(100, 9);
 * expect(kilowattHours.of(year.byResistance)).toBeCloseTo(3600 - 2 * (300 + 200 + 100) - 2400 / 9, 6);
 * ```
 */
export function desuperheaterYear(input: DesuperheaterYearInput): DesuperheaterYear {
  const asked = readDesuperheaterYear(input);
  const months = asked.map((month) => balanceOf(input.desuperheaterShare, month));
  const year = sumOfBalances(months);
  const wanted = asked.reduce((sum, month) => sum + month.wanted, 0);
  return {
    months,
    year,
    hotWaterShare: (wanted === 0 ? 0 : Math.min(1, (year.byHeating + year.byCooling) / wanted)) as Fraction,
    findings: [
      ...shareFindings(input.desuperheaterShare),
      ...winterFindings(year.byHeating, year.extraFromGround, year.extraElectricEnergy, year.extraUnmetEnergy),
    ],
  };
}
