import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  FIELD_EVIDENCE,
  type SeasonalBoundary,
  type SeasonalEnergies,
  seasonalEnergiesShape,
  type SeasonalPerformance,
  seasonalPerformance,
} from '../../src/heat-pump/index.js';
import { REFERENCES } from '../../src/references/index.js';
import { electricKilowattHours, fraction, kilowattHours } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const year: SeasonalEnergies = {
  mode: 'heating',
  origin: 'measured',
  metEnergy: kilowattHours(20_000),
  unitElectricity: electricKilowattHours(5000),
  circulatorElectricity: electricKilowattHours(300),
  auxiliaryEnergy: kilowattHours(500),
  auxiliaryElectricity: electricKilowattHours(520),
  loadSideElectricity: electricKilowattHours(100),
  gridEfficiency: fraction(0.455),
};
const { auxiliaryEnergy: _, auxiliaryElectricity: __, gridEfficiency: ___, ...alone } = year;
const factors = ({ boundaries }: SeasonalPerformance): readonly (number | undefined)[] =>
  boundaries.map(({ performanceFactor }) => performanceFactor);
const names = ({ boundaries }: SeasonalPerformance): readonly SeasonalBoundary['boundary'][] => boundaries.map(({ boundary }) => boundary);
const codes = (energies: SeasonalEnergies): readonly string[] => seasonalPerformance(energies).findings.map(({ code }) => code);

describe('seasonalPerformance', () => {
  it('falls from boundary to boundary while the auxiliary is no better than H2', () => {
    fc.assert(
      fc.property(between(1, 1e6), between(1.1, 9), between(0, 1), between(0, 1), between(0, 1), (met, cop, pump, auxiliary, fans) => {
        const [h1 = 0, h2 = 0, h3 = 0, h4 = 0] = factors(
          seasonalPerformance({
            ...alone,
            metEnergy: kilowattHours(met),
            unitElectricity: electricKilowattHours(met / cop),
            circulatorElectricity: electricKilowattHours((pump * met) / cop),
            auxiliaryEnergy: kilowattHours(auxiliary * met),
            auxiliaryElectricity: electricKilowattHours(auxiliary * met * 1.05),
            loadSideElectricity: electricKilowattHours(fans * met),
          }),
        );
        expect(h2).toBeLessThanOrEqual(h1);
        expect(h4).toBeLessThanOrEqual(h3);
        // The auxiliary lowers the whole only where it is the worse of the two.
        if (1 / 1.05 <= h2) expect(h3).toBeLessThanOrEqual(h2 * (1 + 1e-12));
        else expect(h3).toBeGreaterThanOrEqual(h2 * (1 - 1e-12));
      }),
    );
  });

  it('names every boundary with what is within', () => {
    const performance = seasonalPerformance(year);
    expect(names(performance)).toEqual(['H1', 'H2', 'H3', 'H4']);
    expect(performance.boundaries.map(({ electricityWithin }) => Math.round(electricKilowattHours.of(electricityWithin)))).toEqual([
      5000, 5300, 5820, 5920,
    ]);
    expect(performance.boundaries.map(({ energy }) => Math.round(kilowattHours.of(energy)))).toEqual([20_000, 20_000, 20_500, 20_500]);
    expect(names(seasonalPerformance({ ...alone, mode: 'cooling' }))).toEqual(['C1', 'C2', 'C4']);
  });

  it('takes the heat of an auxiliary for its electricity where that is not told', () => {
    const h3 = seasonalPerformance({ ...alone, auxiliaryEnergy: kilowattHours(500) }).boundaries[2];
    expect(electricKilowattHours.of(h3?.electricityWithin ?? electricKilowattHours(0))).toBeCloseTo(5800, 9);
  });

  it('has no factor where nothing was delivered, whatever ran', () => {
    const still = { ...alone, metEnergy: kilowattHours(0), unitElectricity: electricKilowattHours(0) };
    expect(factors(seasonalPerformance(still))).toEqual([undefined, undefined, undefined, undefined]);
    expect(seasonalPerformance(still).pumpShare).toBe(1);
    const dead = seasonalPerformance({ mode: 'cooling', origin: 'measured', metEnergy: still.metEnergy, unitElectricity: still.unitElectricity });
    expect(dead).not.toHaveProperty('pumpShare');
    expect(codes(still)).toEqual([]);
    const auxiliaryOnly = factors(
      seasonalPerformance({ ...still, auxiliaryEnergy: kilowattHours(300), loadSideElectricity: electricKilowattHours(0) }),
    );
    expect(auxiliaryOnly.map((each) => each?.toFixed(3))).toEqual([undefined, undefined, '0.500', '0.500']);
  });

  it('puts the threshold of renewable heat at 2.527 for the grid that the directive assumed', () => {
    expect(seasonalPerformance(year).renewableFrom).toBeCloseTo(2.527, 3);
    expect(seasonalPerformance(alone)).not.toHaveProperty('renewableFrom');
  });

  it('warns of factors that plants do not have, of a pump that takes much, and that computed ones are high', () => {
    expect(codes(year)).toEqual([]);
    expect(codes({ ...year, origin: 'rating points' })).toEqual(['installed-performance-lower']);
    expect(codes({ ...year, unitElectricity: electricKilowattHours(12_000) })).toEqual(['performance-factor-unusual']);
    expect(codes({ ...alone, unitElectricity: electricKilowattHours(3000) })).toEqual(['performance-factor-unusual']);
    expect(codes({ ...alone, circulatorElectricity: electricKilowattHours(681) })).toEqual([]);
    expect(codes({ ...alone, circulatorElectricity: electricKilowattHours(683) })).toEqual(['pump-share-high']);
    expect(
      codes({
        ...alone,
        mode: 'cooling',
        origin: 'rating points',
        unitElectricity: electricKilowattHours(1000),
        circulatorElectricity: electricKilowattHours(0),
      }),
    ).toEqual([]);
  });

  it('says between what an installed plant would be', () => {
    const [found] = seasonalPerformance({ ...alone, origin: 'rating points' }).findings;
    expect(found?.values).toMatchObject({ boundary: 'H3', low: 0.8 * (20_000 / 5300), high: 0.9 * (20_000 / 5300) });
  });

  it('refuses what cannot be together', () => {
    expect(() => seasonalPerformance({ ...year, unitElectricity: electricKilowattHours(399) })).toThrow('unitElectricity');
    expect(() => seasonalPerformance({ ...year, auxiliaryElectricity: electricKilowattHours(499) })).toThrow('burns fuel');
    expect(() => seasonalPerformance({ ...year, mode: 'cooling' })).toThrow('auxiliaryEnergy');
  });

  it('refuses bad input by name', () => {
    refuses(seasonalPerformance, seasonalEnergiesShape, year);
  });
});

describe('the field evidence', () => {
  it('has a source for every row and lies within the usual range', () => {
    expect(FIELD_EVIDENCE).toHaveLength(9);
    FIELD_EVIDENCE.forEach(({ where, performanceFactor, source }) => {
      expect(where).not.toBe('');
      expect(REFERENCES[source].cite).not.toBe('');
      expect(performanceFactor).toBeGreaterThanOrEqual(2);
      expect(performanceFactor).toBeLessThanOrEqual(5.5);
    });
    expect(FIELD_EVIDENCE.filter(({ boundary }) => boundary === 'H2').map(({ performanceFactor }) => performanceFactor)).toEqual([3.7, 2.8]);
  });
});
