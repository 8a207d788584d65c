import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  breakEvenInputShape,
  breakEvenPerformance,
  emissionsOverYears,
  type EmissionsOverYearsInput,
  emissionsOverYearsInputShape,
  fuelUse,
} from '../../src/cost/index.js';
import { electricKilowattHours, gramsPerKilowattHour, kilogramsPerKilowattHour, kilowattHours, ratio } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { gasBoiler, heatPump } from './support.js';

const declining: EmissionsOverYearsInput = {
  usedElectricity: electricKilowattHours(5000),
  grid: [
    { year: 2026, gridEmissionFactor: gramsPerKilowattHour(400) },
    { year: 2030, gridEmissionFactor: gramsPerKilowattHour(200) },
    { year: 2040, gridEmissionFactor: gramsPerKilowattHour(50) },
  ],
  fromYear: 2027,
  years: 10,
};

describe('emissions over the years', () => {
  it('follow the grid on the line between the years it is known for', () => {
    const { emissionYears, totalEmissions } = emissionsOverYears(declining);
    const expected = [350, 300, 250, 200, 185, 170, 155, 140, 125, 110];
    emissionYears.forEach(({ year, gridEmissionFactor, emissions }, index) => {
      expect(year).toBe(2027 + index);
      expect(gramsPerKilowattHour.of(gridEmissionFactor)).toBeCloseTo(expected[index] ?? 0, 9);
      expect(emissions).toBeCloseTo(5 * (expected[index] ?? 0), 9);
    });
    expect(totalEmissions).toBeCloseTo(5 * expected.reduce((sum, each) => sum + each, 0), 8);
  });

  it('of a grid that stands still are years times the first, with a fuel beside it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 900, noNaN: true }),
        fc.integer({ min: 1, max: 100 }),
        fc.integer({ min: 1900, max: 2300 }),
        (grid, years, fromYear) => {
          const fuel = { boughtEnergy: kilowattHours(3000), emissionFactor: kilogramsPerKilowattHour(0.25) };
          const known = [{ year: 2026, gridEmissionFactor: gramsPerKilowattHour(grid) }];
          const { totalEmissions } = emissionsOverYears({ usedElectricity: electricKilowattHours(1000), grid: known, ...fuel, fromYear, years });
          expect(totalEmissions).toBeCloseTo(years * (grid + 750), 6);
        },
      ),
    );
  });

  it('are not told for years that the grid is not known for', () => {
    expect(() => emissionsOverYears({ ...declining, fromYear: 2025 })).toThrow('fromYear: 2025');
    expect(() => emissionsOverYears({ ...declining, fromYear: 2032 })).toThrow('fromYear: 2032');
    expect(() => emissionsOverYears({ ...declining, fromYear: 2026, years: 20 })).toThrow(
      'years: 20 (count) is not allowed; allowed: a whole number at most 15',
    );
    expect(emissionsOverYears({ ...declining, fromYear: 2031 }).emissionYears.at(-1)?.year).toBe(2040);
    expect(() => emissionsOverYears({ ...declining, grid: [...declining.grid].reverse() })).toThrow('grid.1.year: 2030');
  });
});

describe('break-even', () => {
  it('is where heat pump and fuel emit the same', () => {
    const performance = breakEvenPerformance({
      gridEmissionFactor: kilogramsPerKilowattHour(0.4),
      emissionFactor: kilogramsPerKilowattHour(0.25),
      efficiency: ratio(0.92),
    });
    const energy = kilowattHours(10_000);
    const [gas, pump] = [fuelUse({ energy, source: gasBoiler }), fuelUse({ energy, source: heatPump(performance) })];
    expect(pump.emissions).toBeCloseTo(gas.emissions ?? 0, 9);
  });
});

it('refuses impossible numbers by name', () => {
  const fuel = { boughtEnergy: kilowattHours(3000), emissionFactor: kilogramsPerKilowattHour(0.25) };
  // The limits of the grid are those of the years asked for, so a year far off is refused in the name of the first.
  const withFuel: EmissionsOverYearsInput = { ...declining, ...fuel, years: 5 };
  refuses(emissionsOverYears, emissionsOverYearsInputShape, withFuel);
  const { emissionFactor: _, ...bare } = fuel;
  expect(() => emissionsOverYears({ ...declining, ...bare })).toThrow('emissionFactor: nothing');
  refuses(breakEvenPerformance, breakEvenInputShape, {
    gridEmissionFactor: kilogramsPerKilowattHour(0.4),
    emissionFactor: kilogramsPerKilowattHour(0.25),
    efficiency: ratio(0.9),
  });
});
