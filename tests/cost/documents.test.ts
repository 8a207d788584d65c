import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as cost from '../../src/cost/index.js';
import { type Json, codecOf } from '../../src/document/index.js';
import { codecOfNode } from '../../src/document/codec.js';
import { electricKilowattHours, kilowattHours, money, percentPerYear, ratio, type ShapeNode } from '../../src/units/index.js';
import { arbitraryOf } from '../support/arbitrary.js';
import { byTime, gasBoiler, heatPump, oilBoiler, pelletBoiler } from './support.js';

const systems = ['metric', 'us'] as const;
const shapes = Object.entries(cost).flatMap(([name, value]) => (name.endsWith('Shape') ? [{ name, shape: value as ShapeNode }] : []));
/** Written to text and read back. */
const through = (written: Json): unknown => JSON.parse(JSON.stringify(written));

describe('documents', () => {
  it('have a shape each', () => {
    expect(shapes.length).toBeGreaterThan(20);
  });

  it.each(shapes)('$name comes back bit for bit in either unit system', ({ shape }) => {
    const codec = codecOfNode<unknown>(shape);
    fc.assert(
      fc.property(arbitraryOf(shape), (value) => {
        for (const system of systems) expect(codec.read(through(codec.write(value, system)))).toEqual(value);
      }),
      { numRuns: 30 },
    );
  });

  it.each(systems)('a tariff and a boiler are read in the units of the trade and written in %s', (system) => {
    const tariff = codecOf(cost.tariffShape);
    expect(tariff.read(through(tariff.write(byTime, system)))).toEqual(byTime);
    const source = codecOf(cost.heatSourceShape);
    for (const each of [oilBoiler, pelletBoiler, gasBoiler, heatPump(ratio(3))])
      expect(source.read(through(source.write(each, system)))).toEqual(each);
    const oil = { soldBy: 'volume', volumePrice: '3.80 cur/gal', volumetricHeatingValue: '0.138 MMBtu/gal', basis: 'higher' };
    const read = source.read({ label: 'oil', supply: oil, efficiency: '0.85', efficiencyBasis: 'higher', emissionFactor: '73.96 kg/MMBtu' });
    expect(cost.costOfHeat(read) * 3.6e6).toBeCloseTo(0.110538, 6);
  });

  it('results are written as they are', () => {
    const { findings: _, ...comparison } = cost.compareHeatSources({
      currency: 'EUR',
      priceYear: 2026,
      energy: kilowattHours(20_000),
      heatSources: [oilBoiler, heatPump(ratio(3.3))],
    });
    const compared = codecOf(cost.heatSourceComparisonShape);
    const { findings: __, ...measures } = cost.investmentMeasures({
      extraCost: money(13_000),
      yearlySaving: money(1278.288),
      discountRate: percentPerYear(3),
      years: 20,
    });
    const measured = codecOf(cost.investmentMeasuresShape);
    const { findings: ___, ...bill } = cost.electricityCost({
      use: { from: 'year', unitElectricity: electricKilowattHours(5000) },
      tariff: { currency: 'EUR', priceYear: 2026, pricing: { type: 'flat', energyPrice: heatPrice() } },
    });
    const billed = codecOf(cost.electricityCostShape);
    for (const system of systems) {
      expect(compared.read(through(compared.write(comparison, system)))).toEqual(comparison);
      expect(measured.read(through(measured.write(measures, system)))).toEqual(measures);
      expect(billed.read(through(billed.write(bill, system)))).toEqual(bill);
    }
  });
});

const heatPrice = (): ReturnType<typeof cost.costOfHeat> => cost.costOfHeat(heatPump(ratio(1)));
