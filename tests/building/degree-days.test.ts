import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  degreeDayEnergy,
  equivalentFullLoadHours,
  erbsDegreeDays,
  erbsMonthShape,
  erbsSpread,
  normalMonthShape,
  schoenauKehrigDegreeDays,
} from '../../src/building/index.js';
import {
  celsius,
  type Conductance,
  type DegreeDays,
  fahrenheit,
  fahrenheitDays,
  kelvinDays,
  kelvinDifference,
  kilowattHours,
  kilowatts,
  type Temperature,
  wattsPerKelvin,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const april = { base: celsius(18), meanOutdoor: celsius(15), days: 30 };

describe('degree days of a month', () => {
  it('differ between heating and cooling by the distance of the means', () => {
    fc.assert(
      fc.property(between(-20, 30), between(-60, 45), between(0.01, 10), fc.integer({ min: 1, max: 366 }), (base, mean, spread, days) => {
        const month = { base: celsius(base), meanOutdoor: celsius(mean), days };
        for (const { heating, cooling } of [
          schoenauKehrigDegreeDays({ ...month, spread: kelvinDifference(spread) }),
          erbsDegreeDays({ ...month, yearToYear: kelvinDifference(spread) }),
        ]) {
          const distance = days * (base - mean);
          expect(Math.abs(heating - cooling - distance)).toBeLessThan(1e-12 * (1 + Math.abs(distance) + heating));
          expect(Math.min(heating, cooling)).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  it('after Erbs follow the formula as printed', () => {
    fc.assert(
      fc.property(between(0, 25), between(-20, 35), between(0.5, 4), fc.integer({ min: 28, max: 31 }), (base, mean, yearToYear, days) => {
        const a = 1.698;
        const h = (base - mean) / (yearToYear * Math.sqrt(days));
        const printed = yearToYear * days ** 1.5 * (h / 2 + Math.log(Math.exp(-a * h) + Math.exp(a * h)) / (2 * a));
        const { heating } = erbsDegreeDays({ base: celsius(base), meanOutdoor: celsius(mean), yearToYear: kelvinDifference(yearToYear), days });
        expect(Math.abs(heating - printed)).toBeLessThan(1e-11 * (1 + days * Math.abs(base - mean)));
      }),
    );
  });

  it('after Erbs with the constant misread as 1.698 √N would be 10.4, not 57.0', () => {
    const { heating } = erbsDegreeDays({ base: celsius(18.3), meanOutdoor: celsius(18.3), yearToYear: kelvinDifference(1.7), days: 30 });
    expect(heating).toBeCloseTo(57.0149, 4);
    expect(heating / Math.sqrt(30)).toBeCloseTo(10.409, 3);
  });

  it('are the positive degree days of glaciology', () => {
    // σ/√(2π) exp(−ΔT²/2σ²) + ΔT/2 erfc(−ΔT/(√2 σ)) with ΔT = 3 K and σ = 4 K; erfc(−0.530330085889911) = 1.5467453 from tables.
    const { cooling } = schoenauKehrigDegreeDays({ base: celsius(0), meanOutdoor: celsius(3), spread: kelvinDifference(4), days: 1 });
    expect(cooling).toBeCloseTo((4 / Math.sqrt(2 * Math.PI)) * Math.exp(-9 / 32) + 1.5 * 1.5467453, 6);
  });

  it('refuse bad input by name', () => {
    refuses(schoenauKehrigDegreeDays, normalMonthShape, { ...april, spread: kelvinDifference(4) });
    refuses(erbsDegreeDays, erbsMonthShape, { ...april, yearToYear: kelvinDifference(2) });
  });
});

describe('erbsSpread', () => {
  const urbana = [24.8, 29, 40, 51.9, 62.5, 72.2, 74.9, 73.4, 66.2, 53.9, 41.3, 28.9].map((mean) => fahrenheit(mean));

  it('is positive for every climate on earth', () => {
    fc.assert(
      fc.property(fc.array(between(-75, 45), { minLength: 12, maxLength: 12 }), (means) => {
        for (const spread of erbsSpread(means.map((mean) => celsius(mean))).withinMonth) expect(spread).toBeGreaterThan(0);
      }),
    );
  });

  it('in SI differs from the US line by the rounding of its constant alone, 0.3 degF.d in a year of 5905', () => {
    const heating = (deviations: readonly number[]): number =>
      urbana.reduce((sum, meanOutdoor, index) => {
        const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][index] ?? 0;
        const yearToYear = kelvinDifference(deviations[index] ?? 0);
        return sum + erbsDegreeDays({ base: fahrenheit(65), meanOutdoor, yearToYear, days }).heating;
      }, 0);
    const { yearToYear, overYear } = erbsSpread(urbana);
    const us = urbana.map((mean) => (3.54 - 0.029 * fahrenheit.of(mean) + 0.0664 * 1.8 * overYear) / 1.8);
    expect(fahrenheitDays.of(kelvinDays(heating(us)))).toBeCloseTo(5905.436, 2);
    expect(fahrenheitDays.of(kelvinDays(heating(yearToYear)))).toBeCloseTo(5905.1, 1);
  });

  it('refuses anything but twelve possible means', () => {
    refuses(
      ({ meanOutdoor }: { readonly meanOutdoor: readonly Temperature[] }) => erbsSpread(meanOutdoor),
      { meanOutdoor: { list: 'temperature' } },
      { meanOutdoor: urbana },
    );
    expect(() => erbsSpread(urbana.slice(1))).toThrow('exactly 12');
  });
});

describe('energy of a year', () => {
  it('by degree days is slope times days', () => {
    expect(kilowattHours.of(degreeDayEnergy(wattsPerKelvin(250), kelvinDays(3000)))).toBeCloseTo(18_000, 9);
    refuses(
      ({ slope, degreeDays }: { readonly slope: Conductance; readonly degreeDays: DegreeDays }) => degreeDayEnergy(slope, degreeDays),
      { slope: 'conductance', degreeDays: 'degree days' },
      { slope: wattsPerKelvin(250), degreeDays: kelvinDays(3000) },
    );
  });

  it('over the design load is its hours at full load', () => {
    refuses(equivalentFullLoadHours, { energy: 'energy', designLoad: 'power' }, { energy: kilowattHours(24_000), designLoad: kilowatts(12) });
  });
});
