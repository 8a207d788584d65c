import { demand, demandChoice, demandObject } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { ElectricEnergy, Energy, Fraction, Ratio, Shape } from '../units/index.js';
import { GREATEST_COP } from './rating-point.js';
import { seasonalFindings } from './seasonal-findings.js';

/** What is counted in heating: the unit; and its source pump; and auxiliary heat; and pumps or fans of the load side. */
export type HeatingBoundary = 'H1' | 'H2' | 'H3' | 'H4';

/** What is counted in cooling, numbered as in heating: the unit; and its source pump; and pumps or fans of the load side. */
export type CoolingBoundary = 'C1' | 'C2' | 'C4';

/** Heat and electricity of a month, a season or a year; measured, or computed from rating points. */
export interface SeasonalEnergies {
  /** Heating or cooling. */
  readonly mode: 'heating' | 'cooling';
  /** Whether the numbers are computed from a maker's rating points or measured on the installed unit. */
  readonly origin: 'rating points' | 'measured';
  /** Heat or cold that the unit gives, 0 to 1e18 [J]. */
  readonly metEnergy: Energy;
  /** Electricity of the unit, at least a fiftieth of that, to 1e18 [J]. */
  readonly unitElectricity: ElectricEnergy;
  /** Electricity of the pump on the source side, 0 to 1e18; none when left out [J]. */
  readonly circulatorElectricity?: ElectricEnergy;
  /** Heat of an electric auxiliary heater, 0 to 1e18, in heating only; none when left out [J]. */
  readonly auxiliaryEnergy?: Energy;
  /** Its electricity, at least its heat, to 1e18; its heat when left out [J]. */
  readonly auxiliaryElectricity?: ElectricEnergy;
  /** Electricity of pumps or fans on the load side, 0 to 1e18; none when left out [J]. */
  readonly loadSideElectricity?: ElectricEnergy;
  /** Electricity from the grid over the primary energy it takes, 0.2 to 1, for the legal threshold of renewable heat; not tested when left out [1]. */
  readonly gridEfficiency?: Fraction;
}

/** Performance within one boundary. */
export interface SeasonalBoundary {
  /** What is counted. */
  readonly boundary: HeatingBoundary | CoolingBoundary;
  /** Heat or cold within it [J]. */
  readonly energy: Energy;
  /** Electricity within it [J]. */
  readonly electricityWithin: ElectricEnergy;
  /** One over the other; absent where nothing was delivered [1]. */
  readonly performanceFactor?: Ratio;
}

/** Seasonal performance, each factor with its boundary. */
export interface SeasonalPerformance {
  /** Heating or cooling. */
  readonly mode: 'heating' | 'cooling';
  /** From the unit alone to all of the plant. */
  readonly boundaries: readonly SeasonalBoundary[];
  /** Electricity of the source pump over that of unit and source pump; absent where neither took any [1]. */
  readonly pumpShare?: Fraction;
  /** Least factor at which heat counts as renewable in EU law; where the efficiency of the grid was given [1]. */
  readonly renewableFrom?: Ratio;
}

/** A {@link SeasonalPerformance} with its findings. */
export interface SeasonalPerformanceResult extends SeasonalPerformance {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link SeasonalEnergies}. */
export const seasonalEnergiesShape: Shape<SeasonalEnergies> = {
  mode: ['heating', 'cooling'],
  origin: ['rating points', 'measured'],
  metEnergy: 'energy',
  unitElectricity: 'electric energy',
  circulatorElectricity: { optional: 'electric energy' },
  auxiliaryEnergy: { optional: 'energy' },
  auxiliaryElectricity: { optional: 'electric energy' },
  loadSideElectricity: { optional: 'electric energy' },
  gridEfficiency: { optional: 'fraction' },
};

/** Shape of {@link SeasonalPerformance}. */
export const seasonalPerformanceShape: Shape<SeasonalPerformance> = {
  mode: ['heating', 'cooling'],
  boundaries: {
    list: {
      boundary: ['H1', 'H2', 'H3', 'H4', 'C1', 'C2', 'C4'],
      energy: 'energy',
      electricityWithin: 'electric energy',
      performanceFactor: { optional: 'ratio' },
    },
  },
  pumpShare: { optional: 'fraction' },
  renewableFrom: { optional: 'ratio' },
};

const ENERGY = { atLeast: 0, atMost: 1e18 } as const;
/** A factor from which heat is renewable, times the efficiency of the grid. */
const RENEWABLE = 1.15;

/**
 * Seasonal performance at the boundaries H1 to H4, from heat and electricity.
 *
 * H1 counts the unit alone, H2 adds the source pump, H3 the auxiliary heater with its heat and its electricity, H4 pumps or fans of the load side. A factor
 * without its boundary says little: the same plant may have 4 at one and 3 at another. Cooling has C1, C2 and C4, the same without an auxiliary.
 * A stove or a boiler beside the unit belongs in none of them.
 *
 * @param energies - heat and electricity by what takes it [J]
 * @returns each boundary with its heat, electricity and factor, share of the pump, and what to look at
 * @throws InputError for a value out of its range, auxiliary heat in cooling, or more auxiliary heat than electricity
 * @remarks
 * Boundaries: `sepemo2012`; C-boundaries numbered after them here. Renewable: factor ≥ 1.15/η (`eu2009of28`). Findings: H3 outside 2.0 to 5.5; source pump over 12 %;
 * how much lower installed units were found than computed ones. Invariants tested: H1 ≥ H2 and H3 ≥ H4; H2 ≥ H3 where the efficiency of the auxiliary is at most H2.
 * @example
 * ```ts @import.meta.vitest
 * const { electricKilowattHours, kilowattHours } = await import('../units/index.js');
 * const { boundaries } = seasonalPerformance({
 *   mode: 'heating',
 *   origin: 'measured',
 *   metEnergy: kilowattHours(20_000),
 *   unitElectricity: electricKilowattHours(5000),
 *   circulatorElectricity: electricKilowattHours(300),
 *   auxiliaryEnergy: kilowattHours(500),
 * });
 * expect(boundaries.map(({ boundary, performanceFactor = 0 }) => `${boundary} ${performanceFactor.toFixed(2)}`)).toEqual(['H1 4.00', 'H2 3.77', 'H3 3.53', 'H4 3.53']);
 * ```
 */
export function seasonalPerformance(energies: SeasonalEnergies): SeasonalPerformanceResult {
  demandObject('energies', energies);
  const { mode, origin, metEnergy, unitElectricity, circulatorElectricity: pump = 0, loadSideElectricity: loadSide = 0, gridEfficiency } = energies;
  demandChoice('mode', mode, ['heating', 'cooling']);
  demandChoice('origin', origin, ['rating points', 'measured']);
  demand('metEnergy', 'energy', metEnergy, ENERGY);
  demand('unitElectricity', 'electric energy', unitElectricity, { atLeast: metEnergy / GREATEST_COP, atMost: ENERGY.atMost }, TOO_LITTLE);
  demand('circulatorElectricity', 'electric energy', pump, ENERGY);
  demand('loadSideElectricity', 'electric energy', loadSide, ENERGY);
  if (gridEfficiency !== undefined) demand('gridEfficiency', 'fraction', gridEfficiency, { atLeast: 0.2, atMost: 1 });
  const auxiliary = auxiliaryOf(energies);
  const source = unitElectricity + pump;
  const letter = mode === 'heating' ? 'H' : 'C';
  const boundaries = [
    within(`${letter}1`, metEnergy, unitElectricity),
    within(`${letter}2`, metEnergy, source),
    ...(mode === 'heating' ? [within('H3', metEnergy + auxiliary.heat, source + auxiliary.electricity)] : []),
    within(`${letter}4`, metEnergy + auxiliary.heat, source + auxiliary.electricity + loadSide),
  ];
  const performance: SeasonalPerformance = {
    mode,
    boundaries,
    ...(source > 0 ? { pumpShare: (pump / source) as Fraction } : {}),
    ...(gridEfficiency !== undefined ? { renewableFrom: (RENEWABLE / gridEfficiency) as Ratio } : {}),
  };
  return { ...performance, findings: seasonalFindings(performance, energies) };
}

const TOO_LITTLE = 'no unit gives fifty times its electricity; a year driven by heat from the ground holds none';

function within(boundary: SeasonalBoundary['boundary'], energy: number, electricity: number): SeasonalBoundary {
  const sums = { boundary, energy: energy as Energy, electricityWithin: electricity as ElectricEnergy };
  return energy > 0 && electricity > 0 ? { ...sums, performanceFactor: (energy / electricity) as Ratio } : sums;
}

/** Heat and electricity of the auxiliary heater, where there is one. */
function auxiliaryOf({ mode, auxiliaryEnergy = 0 as Energy, auxiliaryElectricity }: SeasonalEnergies): {
  readonly heat: number;
  readonly electricity: number;
} {
  demand('auxiliaryEnergy', 'energy', auxiliaryEnergy, mode === 'heating' ? ENERGY : { atLeast: 0, atMost: 0 });
  if (auxiliaryElectricity === undefined) return { heat: auxiliaryEnergy, electricity: auxiliaryEnergy };
  // A heater without loss may come out a rounding short.
  const range = { atLeast: auxiliaryEnergy * (1 - 1e-12), atMost: mode === 'heating' ? ENERGY.atMost : 0 };
  demand('auxiliaryElectricity', 'electric energy', auxiliaryElectricity, range, 'an auxiliary that burns fuel belongs in no boundary');
  return { heat: auxiliaryEnergy, electricity: auxiliaryElectricity };
}
