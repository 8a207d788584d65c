import { demand, demandObject, locate } from '../errors/index.js';
import { type SeasonalPerformance, type SeasonalPerformanceResult, seasonalPerformance, seasonalPerformanceShape } from '../heat-pump/index.js';
import type { ElectricEnergy, ElectricPower, Fraction, Shape } from '../units/index.js';
import type { ModeLedger } from './ledger.js';
import type { SimulatedYear } from './simulation.js';

/** What a simulated year does not know of the plant. */
export interface SeasonOptions {
  /** Electric input of pumps or fans on the load side while the unit runs, 0 to 1e6; none when left out [W]. */
  readonly loadSidePower?: ElectricPower;
  /** Heat over electricity of the auxiliary heater, 0.5 to 1; 1 when left out [1]. */
  readonly auxiliaryEfficiency?: Fraction;
  /** Electricity from the grid over the primary energy it takes, 0.2 to 1; renewable heat is not tested when left out [1]. */
  readonly gridEfficiency?: Fraction;
}

/** Seasonal performance of one month. */
export interface MonthOfSeason {
  /** 1 to 12. */
  readonly month: number;
  /** Heating. */
  readonly heating: SeasonalPerformance;
  /** Cooling. */
  readonly cooling: SeasonalPerformance;
}

/** Seasonal performance of a simulated year. */
export interface Season {
  /** Heating over the year. */
  readonly heating: SeasonalPerformanceResult;
  /** Cooling over the year; cold that is not met is in none of it. */
  readonly cooling: SeasonalPerformanceResult;
  /** Month by month; absent where the year has no months. */
  readonly months?: readonly MonthOfSeason[];
}

/** Shape of {@link SeasonOptions}. */
export const seasonOptionsShape: Shape<SeasonOptions> = {
  loadSidePower: { optional: 'electric power' },
  auxiliaryEfficiency: { optional: 'fraction' },
  gridEfficiency: { optional: 'fraction' },
};

/** Shape of {@link MonthOfSeason}. */
export const monthOfSeasonShape: Shape<MonthOfSeason> = { month: 'count', heating: seasonalPerformanceShape, cooling: seasonalPerformanceShape };

/**
 * Seasonal performance of a simulated year at its boundaries, in heating and in cooling, over the year and by month.
 *
 * Heat that the unit does not meet is an electric auxiliary's. Loss by cycling counts where the simulated unit was given one.
 * Where the load side's own electricity is metered or known for the whole season, divide it by the running time for `loadSidePower`.
 *
 * @param year - a year that `simulate` followed, driven by loads of the building
 * @param options - load side [W], auxiliary and grid [1]
 * @returns boundaries with heat, electricity and factor for each mode, and by month
 * @throws InputError for an option out of its range, or `out-of-range` for a year driven by heat from the ground, which holds no electricity of a unit
 * @remarks Boundaries as {@link seasonalPerformance}. Invariants tested: the months add up to the year; H1 and H2 are those of the year's ledger.
 * @example
 * ```ts @import.meta.vitest
 * const { electricWatts, electricKilowattHours, fraction, hours, kilowattHours } = await import('../units/index.js');
 * const nothing = { energy: kilowattHours(0), metEnergy: kilowattHours(0), unmetEnergy: kilowattHours(0), groundEnergy: kilowattHours(0), runTime: hours(0) };
 * const unused = { fullHeatTime: hours(0), coveredShare: fraction(1), unitElectricity: electricKilowattHours(0), circulatorElectricity: electricKilowattHours(0) };
 * const cooling = { ...nothing, ...unused };
 * const heating = {
 *   ...cooling,
 *   metEnergy: kilowattHours(20_000),
 *   unitElectricity: electricKilowattHours(5000),
 *   circulatorElectricity: electricKilowattHours(300),
 *   runTime: hours(2200),
 * };
 * const season = seasonOf({ year: 1, heating, cooling }, { loadSidePower: electricWatts(100) });
 * expect(season.heating.boundaries.map(({ performanceFactor }) => performanceFactor?.toFixed(2))).toEqual(['4.00', '3.77', '3.77', '3.62']);
 * expect(season.cooling.boundaries.some(({ performanceFactor }) => performanceFactor !== undefined)).toBe(false);
 * ```
 */
export function seasonOf(year: SimulatedYear, options: SeasonOptions = {}): Season {
  demandObject('year', year);
  demandObject('options', options);
  const { gridEfficiency } = options;
  const { loadSidePower = 0, auxiliaryEfficiency = 1 }: { readonly loadSidePower?: number; readonly auxiliaryEfficiency?: number } = options;
  demand('loadSidePower', 'electric power', loadSidePower, { atLeast: 0, atMost: 1e6 });
  demand('auxiliaryEfficiency', 'fraction', auxiliaryEfficiency, { atLeast: 0.5, atMost: 1 });
  if (gridEfficiency !== undefined) demand('gridEfficiency', 'fraction', gridEfficiency, { atLeast: 0.2, atMost: 1 });
  const of = (path: string, mode: 'heating' | 'cooling', ledger: ModeLedger): SeasonalPerformanceResult =>
    locate(path, () => {
      demandObject(mode, ledger);
      const { metEnergy, unmetEnergy, unitElectricity, circulatorElectricity, runTime } = ledger;
      demand(`${mode}.unmetEnergy`, 'energy', unmetEnergy, { atLeast: 0 });
      demand(`${mode}.runTime`, 'time', runTime, { atLeast: 0 });
      return locate(mode, () =>
        seasonalPerformance({
          mode,
          origin: 'rating points',
          metEnergy,
          unitElectricity,
          circulatorElectricity,
          loadSideElectricity: (loadSidePower * runTime) as ElectricEnergy,
          ...(mode === 'heating'
            ? { auxiliaryEnergy: unmetEnergy, auxiliaryElectricity: (unmetEnergy / auxiliaryEfficiency) as ElectricEnergy }
            : {}),
          ...(mode === 'heating' && gridEfficiency !== undefined ? { gridEfficiency } : {}),
        }),
      );
    });
  const heating = of('year', 'heating', year.heating);
  const cooling = of('year', 'cooling', year.cooling);
  const months = year.months?.map((each, index): MonthOfSeason => {
    const path = `year.months.${String(index)}`;
    return {
      month: each.month,
      heating: withoutFindings(of(path, 'heating', each.heating)),
      cooling: withoutFindings(of(path, 'cooling', each.cooling)),
    };
  });
  return { heating, cooling, ...(months && { months }) };
}

/** A month alone says little about a plant. */
function withoutFindings({ findings: _, ...performance }: SeasonalPerformanceResult): SeasonalPerformance {
  return performance;
}
