import { demand, demandCount, demandObject, InputError } from '../errors/index.js';
import type { ElectricEnergy, EmissionFactor, Energy, Mass, Ratio, Shape } from '../units/index.js';
import { EFFICIENCY } from './heating-basis.js';
import { demandYear, EMISSION, STUDY_YEARS, YEARLY_ENERGY } from './limits.js';

/** A grid beside a fuel. */
export interface BreakEvenInput {
  /** Emissions of electricity, 0 to 1e-5 [kg/J]. */
  readonly gridEmissionFactor: EmissionFactor;
  /** Emissions of the fuel, 1e-12 to 1e-5 [kg/J]. */
  readonly emissionFactor: EmissionFactor;
  /** Efficiency of burning it, on the heating value that its emissions count on, 0.05 to 15 [1]. */
  readonly efficiency: Ratio;
}

/** Shape of {@link BreakEvenInput}. */
export const breakEvenInputShape: Shape<BreakEvenInput> = {
  gridEmissionFactor: 'emission factor',
  emissionFactor: 'emission factor',
  efficiency: 'ratio',
};

/**
 * Seasonal performance factor above which a heat pump emits less than a fuel: grid · efficiency/fuel. The same with prices in place of emissions tells
 * above which it costs less; `costOfHeat` makes those.
 *
 * @param of - emission factors [kg/J], efficiency [1]
 * @returns seasonal performance factor [1]
 * @throws InputError when a number is out of its range
 * @example
 * ```ts @import.meta.vitest
 * const { kilogramsPerKilowattHour, kilogramsPerMillionBtu, ratio } = await import('../units/index.js');
 * const oil = { emissionFactor: kilogramsPerMillionBtu(73.96), efficiency: ratio(0.85) };
 * expect(breakEvenPerformance({ gridEmissionFactor: kilogramsPerKilowattHour(0.373), ...oil })).toBeCloseTo(1.25633, 5);
 * ```
 */
export function breakEvenPerformance({ gridEmissionFactor, emissionFactor, efficiency }: BreakEvenInput): Ratio {
  demand('gridEmissionFactor', 'emission factor', gridEmissionFactor, EMISSION);
  demand('emissionFactor', 'emission factor', emissionFactor, { atLeast: 1e-12, atMost: 1e-5 }, 'a fuel without emissions is never beaten');
  demand('efficiency', 'ratio', efficiency, EFFICIENCY);
  return ((gridEmissionFactor * efficiency) / emissionFactor) as Ratio;
}

/** Emissions of electricity in a year. */
export interface GridYear {
  /** Year that the figure is for, 1900 to 2300. */
  readonly year: number;
  /** Emissions, 0 to 1e-5 [kg/J]. */
  readonly gridEmissionFactor: EmissionFactor;
}

/** What {@link emissionsOverYears} needs. */
export interface EmissionsOverYearsInput {
  /** Electricity of each year, 0 to 1e16 [J]. */
  readonly usedElectricity: ElectricEnergy;
  /** The grid in some years, rising, 1 to 200; a single one stands for all years, between two the line is taken. */
  readonly grid: readonly GridYear[];
  /** Fuel of each year, on the basis that its emissions count on, 0 to 1e16; none when left out [J]. */
  readonly boughtEnergy?: Energy;
  /** Emissions of the fuel, 0 to 1e-5; needed with a fuel [kg/J]. */
  readonly emissionFactor?: EmissionFactor;
  /** First year, 1900 to 2300. */
  readonly fromYear: number;
  /** How many years, 1 to 100. */
  readonly years: number;
}

const gridYearShape: Shape<GridYear> = { year: 'count', gridEmissionFactor: 'emission factor' };

/** Shape of {@link EmissionsOverYearsInput}. */
export const emissionsOverYearsInputShape: Shape<EmissionsOverYearsInput> = {
  usedElectricity: 'electric energy',
  grid: { list: gridYearShape },
  boughtEnergy: { optional: 'energy' },
  emissionFactor: { optional: 'emission factor' },
  fromYear: 'count',
  years: 'count',
};

/** Emissions of one year. */
export interface EmissionsOfYear extends GridYear {
  /** Emissions of electricity and fuel [kg]. */
  readonly emissions: Mass;
}

/** Emissions year by year. */
export interface EmissionsOverYears {
  /** From the first year on. */
  readonly emissionYears: readonly EmissionsOfYear[];
  /** Sum of all years; emissions are not discounted [kg]. */
  readonly totalEmissions: Mass;
}

/** Shape of {@link EmissionsOverYears}. */
export const emissionsOverYearsShape: Shape<EmissionsOverYears> = {
  emissionYears: { list: { year: 'count', gridEmissionFactor: 'emission factor', emissions: 'mass' } },
  totalEmissions: 'mass',
};

/**
 * Emissions of a heating system year by year, while the grid changes.
 *
 * @param input - electricity and fuel of each year [J], emission factors [kg/J], years
 * @returns emissions [kg]
 * @throws InputError when a number is out of its range, or a year lies outside those that the grid is known for
 * @remarks Invariant tested: with one grid year the total is years times the first.
 * @example
 * ```ts @import.meta.vitest
 * const { electricMegawattHours, gramsPerKilowattHour } = await import('../units/index.js');
 * const grid = [
 *   { year: 2026, gridEmissionFactor: gramsPerKilowattHour(300) },
 *   { year: 2036, gridEmissionFactor: gramsPerKilowattHour(100) },
 * ];
 * const { totalEmissions } = emissionsOverYears({ usedElectricity: electricMegawattHours(5), grid, fromYear: 2026, years: 11 });
 * expect(totalEmissions).toBeCloseTo(11_000, 6);
 * ```
 */
export function emissionsOverYears(input: EmissionsOverYearsInput): EmissionsOverYears {
  const { usedElectricity, grid, boughtEnergy, emissionFactor, fromYear, years } = input;
  demand('usedElectricity', 'electric energy', usedElectricity, YEARLY_ENERGY);
  demandGrid(grid);
  if (boughtEnergy !== undefined) demand('boughtEnergy', 'energy', boughtEnergy, YEARLY_ENERGY);
  if (emissionFactor !== undefined || boughtEnergy !== undefined)
    demand('emissionFactor', 'emission factor', emissionFactor as EmissionFactor, EMISSION);
  demandYear('fromYear', fromYear);
  demand('years', 'count', years, STUDY_YEARS);
  if (grid.length > 1) {
    const [first, last] = [grid[0]?.year ?? 0, grid.at(-1)?.year ?? 0];
    demand('years', 'count', years, { atMost: last - first + 1 }, 'the grid is known for no more years; a single year of it stands for all');
    demand('fromYear', 'count', fromYear, { atLeast: first, atMost: last - years + 1 }, 'the grid is known for other years than these');
  }
  const ofFuel = (boughtEnergy ?? 0) * (emissionFactor ?? 0);
  const emissionYears = Array.from({ length: years }, (_, index): EmissionsOfYear => {
    const year = fromYear + index;
    const factor = gridIn(grid, year);
    return { year, gridEmissionFactor: factor as EmissionFactor, emissions: (usedElectricity * factor + ofFuel) as Mass };
  });
  return { emissionYears, totalEmissions: emissionYears.reduce((sum, { emissions }) => sum + emissions, 0) as Mass };
}

function demandGrid(grid: readonly GridYear[]): void {
  demandCount('grid', grid, 1, 200);
  let last = -Infinity;
  grid.forEach((each, index) => {
    const place = `grid.${String(index)}`;
    demandObject(place, each);
    demandYear(`${place}.year`, each.year);
    if (each.year <= last) {
      const value = { kind: 'count', value: each.year } as const;
      throw new InputError({ code: 'impossible', argument: `${place}.year`, value, allowed: 'years that rise' });
    }
    demand(`${place}.gridEmissionFactor`, 'emission factor', each.gridEmissionFactor, EMISSION);
    last = each.year;
  });
}

/** The grid in a year, on the line between the years that it is known for. */
function gridIn(grid: readonly GridYear[], year: number): number {
  const after = grid.findIndex((each) => each.year >= year);
  const [upper, lower] = [grid[after] ?? grid[0], grid[after - 1]];
  if (upper === undefined) return 0;
  if (lower === undefined) return upper.gridEmissionFactor;
  return lower.gridEmissionFactor + ((year - lower.year) / (upper.year - lower.year)) * (upper.gridEmissionFactor - lower.gridEmissionFactor);
}
