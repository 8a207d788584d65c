import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compareHeatSources,
  type CompareHeatSourcesInput,
  compareHeatSourcesInputShape,
  costOfHeat,
  efficiencyOnBasis,
  type EfficiencyOnBasisInput,
  efficiencyOnBasisInputShape,
  fuelFacts,
  type FuelName,
  fuelUse,
  fuelUseInputShape,
  type HeatSource,
  type HeatingBasis,
} from '../../src/cost/index.js';
import { kilogramsPerKilowattHour, kilowattHours, megajoulesPerLitre, perKilowattHour, perLitre, ratio } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { gasBoiler, heatPump, oilBoiler, pelletBoiler } from './support.js';

const energy = kilowattHours(20_000);
const HIGHER = megajoulesPerLitre(38.5);
/** One boiler, its figures on any mixture of bases. */
const boiler = (price: HeatingBasis, efficiency: HeatingBasis, emission: HeatingBasis, over: number, volumePrice = 1.1): HeatSource => ({
  label: 'boiler',
  supply: {
    soldBy: 'volume',
    volumePrice: perLitre(volumePrice),
    volumetricHeatingValue: megajoulesPerLitre(megajoulesPerLitre.of(HIGHER) * (price === 'higher' ? 1 : over)),
    basis: price,
  },
  efficiency: ratio(0.85 / (efficiency === 'higher' ? 1 : over)),
  efficiencyBasis: efficiency,
  lowerOverHigher: ratio(over),
  emissionFactor: kilogramsPerKilowattHour(0.25 / (emission === 'higher' ? 1 : over)),
  emissionBasis: emission,
});
const basis = fc.constantFrom<HeatingBasis>('higher', 'lower');
const over = fc.double({ min: 0.8, max: 1, noNaN: true });

describe('a boiler', () => {
  it('burns, costs and emits the same whatever its figures count on', () => {
    fc.assert(
      fc.property(basis, basis, basis, over, (price, efficiency, emission, lower) => {
        const found = fuelUse({ energy, source: boiler(price, efficiency, emission, lower) });
        // 20 000 kWh at 0.85 on the higher heating value of 38.5 MJ/L.
        const litres = (20_000 * 3.6) / 0.85 / 38.5;
        expect(1000 * (found.boughtVolume ?? 0)).toBeCloseTo(litres, 8);
        expect(found.totalCost).toBeCloseTo(litres * 1.1, 8);
        expect(found.emissions).toBeCloseTo((20_000 / 0.85) * 0.25, 8);
        expect(found.findings.map(({ code }) => code)).toEqual(price === efficiency ? [] : ['efficiency-basis-converted']);
      }),
    );
  });

  it('costs in proportion to heat and to price', () => {
    const uses = fc.double({ min: 0, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(uses, fc.double({ min: 0, max: 50, noNaN: true }), over, (heat, times, lower) => {
        const at = (amount: number, price: number): number =>
          fuelUse({ energy: kilowattHours(amount), source: boiler('lower', 'higher', 'higher', lower, price) }).totalCost;
        expect(Math.abs(at(heat * times, 1) - times * at(heat, 1))).toBeLessThanOrEqual(1e-13 * times * at(heat, 1) + 1e-290);
        expect(Math.abs(at(heat, times) - times * at(heat, 1))).toBeLessThanOrEqual(1e-13 * times * at(heat, 1) + 1e-290);
      }),
    );
  });

  it('with figures on two bases and no ratio between them is refused', () => {
    const { lowerOverHigher: _, ...bare } = boiler('higher', 'lower', 'higher', 0.94);
    expect(() => fuelUse({ energy, source: bare })).toThrow('source.lowerOverHigher: nothing');
    const { lowerOverHigher: __, ...emission } = boiler('higher', 'higher', 'lower', 0.94);
    expect(() => fuelUse({ energy, source: emission })).toThrow('source.lowerOverHigher: nothing');
    const { efficiencyBasis: ___, ...untold } = gasBoiler;
    expect(() => costOfHeat(untold)).toThrow('efficiencyBasis: nothing');
  });

  it('gives no more heat than its fuel holds, but for a condensing one on the lower heating value', () => {
    const codes = (source: HeatSource): readonly string[] => fuelUse({ energy, source }).findings.map(({ code }) => code);
    const low = { soldBy: 'energy', energyPrice: perKilowattHour(0.1), basis: 'lower' } as const;
    const condensing: HeatSource = { label: 'condensing', supply: low, efficiency: ratio(1.06), efficiencyBasis: 'lower' };
    expect(codes(condensing)).toEqual([]);
    expect(codes({ ...condensing, lowerOverHigher: ratio(0.9) })).toEqual([]);
    expect(codes({ ...condensing, lowerOverHigher: ratio(0.95) })).toEqual(['efficiency-above-fuel']);
    expect(codes({ ...gasBoiler, efficiency: ratio(1.06) })).toEqual(['efficiency-above-fuel']);
    expect(codes({ ...condensing, efficiency: ratio(1.25) })).toEqual(['efficiency-above-fuel']);
  });
});

describe('electricity', () => {
  it('has no heating value to count on', () => {
    expect(() => costOfHeat({ ...heatPump(ratio(3)), efficiencyBasis: 'higher' })).toThrow('efficiencyBasis: higher');
    expect(() => costOfHeat({ ...heatPump(ratio(3)), emissionBasis: 'lower' })).toThrow('emissionBasis: lower');
  });

  it('costs its price over the performance', () => {
    expect(perKilowattHour.of(costOfHeat(heatPump(ratio(3.3))))).toBeCloseTo(0.16 / 3.3, 14);
    expect(fuelUse({ energy, source: heatPump(ratio(4)) }).emissions).toBeCloseTo(2000, 9);
  });
});

describe('facts of fuels', () => {
  const names: readonly FuelName[] = ['fuel oil no. 1', 'fuel oil no. 2', 'kerosene', 'propane', 'liquefied petroleum gas', 'butane', 'natural gas'];
  it('hold no price and no emissions', () => {
    for (const name of names) {
      expect(Object.keys(fuelFacts(name)).sort()).toEqual(['basis', 'fuel', 'lowerOverHigher', 'sources', 'volumetricHeatingValue']);
    }
  });

  it('agree with what hydrogen in the fuel makes of the lower heating value', () => {
    // A kilogram of hydrogen gives 8.94 kg of water of 2.44 MJ/kg; hydrogen shares of oil, propane and methane from their formulas.
    const byHydrogen = (hydrogen: number, higherPerKilogram: number): number => 1 - (8.94 * 2.44 * hydrogen) / higherPerKilogram;
    expect(fuelFacts('fuel oil no. 2').lowerOverHigher).toBeCloseTo(byHydrogen(0.127, 45.5), 1.7);
    expect(fuelFacts('propane').lowerOverHigher).toBeCloseTo(byHydrogen(0.1829, 50.3), 1.7);
    expect(fuelFacts('natural gas').lowerOverHigher).toBeCloseTo(byHydrogen(0.2513, 55.5), 1.7);
  });

  it('are refused for what is not in the table', () => {
    expect(() => fuelFacts('peat' as FuelName)).toThrow('fuel: peat');
  });
});

describe('a comparison', () => {
  const input: CompareHeatSourcesInput = {
    currency: 'EUR',
    priceYear: 2026,
    energy,
    heatSources: [oilBoiler, pelletBoiler, gasBoiler, heatPump(ratio(3.3))],
    dateYear: 2026,
  };

  it('has a row for each, held against the first', () => {
    const { rows, cheapest, currency } = compareHeatSources(input);
    expect(currency).toBe('EUR');
    expect(rows.map(({ label }) => label)).toEqual(['oil', 'pellets', 'gas', 'ground source']);
    expect(cheapest).toBe('ground source');
    expect(rows[0]).toMatchObject({ costBeyondFirst: 0, emissionsBeyondFirst: 0 });
    expect(rows[3]?.costBeyondFirst).toBeCloseTo((20_000 / 3.3) * 0.16 - (rows[0]?.totalCost ?? 0), 9);
    expect(rows[1]).not.toHaveProperty('emissionsBeyondFirst');
    expect(rows[1]?.boughtMass).toBeCloseTo((20_000 * 3.6) / 0.88 / 17, 8);
    for (const [index, row] of rows.entries()) expect(row.heatPrice).toBeCloseTo(costOfHeat(input.heatSources[index] ?? gasBoiler), 18);
  });

  it('says when prices are old', () => {
    expect(compareHeatSources({ ...input, dateYear: 2031 }).findings.map(({ code }) => code)).toContain('prices-old');
  });

  it('refuses impossible numbers by name', () => {
    refuses(compareHeatSources, compareHeatSourcesInputShape, input);
    refuses(
      fuelUse,
      fuelUseInputShape,
      { energy, source: oilBoiler },
      {
        more: [pelletBoiler, gasBoiler, heatPump(ratio(3))].map((source) => ({ energy, source })),
      },
    );
    const condensing: EfficiencyOnBasisInput = {
      efficiency: ratio(1.05),
      givenBasis: 'lower',
      wantedBasis: 'higher',
      lowerOverHigher: ratio(0.9),
    };
    refuses(efficiencyOnBasis, efficiencyOnBasisInputShape, condensing);
  });

  it('an efficiency goes there and back', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 1.1, noNaN: true }), over, basis, basis, (efficiency, lower, from, to) => {
        const there = efficiencyOnBasis({ efficiency: ratio(efficiency), givenBasis: from, wantedBasis: to, lowerOverHigher: ratio(lower) });
        const back = efficiencyOnBasis({ efficiency: there, givenBasis: to, wantedBasis: from, lowerOverHigher: ratio(lower) });
        expect(back).toBeCloseTo(efficiency, 14);
      }),
    );
  });
});
