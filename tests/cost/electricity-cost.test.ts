import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  electricityCost,
  type ElectricityCostInput,
  electricityCostInputShape,
  type ElectricityUse,
  type EnergyPricing,
  type Tariff,
  tariffShape,
} from '../../src/cost/index.js';
import { electricKilowattHours, electricWatts, money, perKilowatt, perKilowattHour, ratio } from '../../src/units/index.js';
import { faultsOf, refuses } from '../support/bad-input.js';
import { byTime, flat } from './support.js';

const year: ElectricityUse = {
  from: 'year',
  unitElectricity: electricKilowattHours(5000),
  circulatorElectricity: electricKilowattHours(300),
  auxiliaryElectricity: electricKilowattHours(120),
  loadSideElectricity: electricKilowattHours(400),
};
const month = (kilowattHours: number, watts: number): (ElectricityUse & { from: 'months' })['months'][number] => ({
  unitElectricity: electricKilowattHours(kilowattHours),
  circulatorElectricity: electricKilowattHours(kilowattHours / 20),
  auxiliaryElectricity: electricKilowattHours(kilowattHours / 50),
  loadSideElectricity: electricKilowattHours(kilowattHours / 10),
  highestPower: electricWatts(watts),
});
const months: ElectricityUse = {
  from: 'months',
  months: [900, 800, 600, 300, 100, 0, 0, 0, 100, 300, 600, 800].map((each) => month(each, 3000 + each)),
};
/** A draw of 1 kW in the hours that a rule holds. */
const hours = (when: (month: number, hour: number, place: number) => boolean, length = 8760): ElectricityUse => {
  const leap = length === 8784 ? 1 : 0;
  const lengths = [31, 28 + leap, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const monthOf = lengths.flatMap((days, index) => Array.from({ length: 24 * days }, () => index + 1));
  return { from: 'hours', unitDraws: monthOf.map((each, place) => electricWatts(when(each, place % 24, place) ? 1000 : 0)) };
};
const cost = (use: ElectricityUse, tariff: Tariff = flat): ReturnType<typeof electricityCost> => electricityCost({ use, tariff });
const scaled = (pricing: EnergyPricing, times: number): EnergyPricing => {
  const price = (each: number): ReturnType<typeof perKilowattHour> => perKilowattHour(each * 3.6e6 * times);
  const energyPrice = price(pricing.energyPrice);
  if (pricing.type === 'flat') return { type: 'flat', energyPrice };
  if (pricing.type === 'by time') {
    return { type: 'by time', energyPrice, windows: pricing.windows.map((each) => ({ ...each, energyPrice: price(each.energyPrice) })) };
  }
  return { type: 'by block', energyPrice, blocks: pricing.blocks.map((each) => ({ ...each, energyPrice: price(each.energyPrice) })) };
};
const blocks: EnergyPricing = {
  type: 'by block',
  blocks: [
    { blockLimit: electricKilowattHours(200), energyPrice: perKilowattHour(0.1) },
    { blockLimit: electricKilowattHours(600), energyPrice: perKilowattHour(0.2) },
  ],
  energyPrice: perKilowattHour(0.4),
};

describe('the cost of a year', () => {
  it('is use times price where that is one', () => {
    const { totalCost, meanEnergyPrice, months: none } = cost(year);
    expect(totalCost).toBeCloseTo(5820 * 0.25, 9);
    expect(perKilowattHour.of(meanEnergyPrice ?? perKilowattHour(0))).toBeCloseTo(0.25, 12);
    expect(none).toBeUndefined();
  });

  it('adds fixed charges, highest hours and taxes', () => {
    const tariff: Tariff = { ...flat, monthlyCharge: money(9), demandPrice: perKilowatt(4), taxRatio: ratio(0.1) };
    const found = cost(months, tariff);
    expect(found.fixedCost).toBe(108);
    expect(found.demandCost).toBeCloseTo(4 * (36 + 4.5), 9);
    expect(found.totalCost).toBeCloseTo((4500 * 1.17 * 0.25 + 108 + 162) * 1.1, 9);
  });

  it('by blocks goes month by month', () => {
    const [january, , , april] = cost(months, { ...flat, pricing: blocks }).months ?? [];
    expect(january?.energyCost).toBeCloseTo(200 * 0.1 + 400 * 0.2 + (900 * 1.17 - 600) * 0.4, 9);
    expect(april?.energyCost).toBeCloseTo(200 * 0.1 + (300 * 1.17 - 200) * 0.2, 9);
  });

  it('by time takes the first window that holds, past midnight too', () => {
    const priceOf = (when: Parameters<typeof hours>[0]): number => {
      const found = cost(hours(when), { ...byTime, taxRatio: ratio(0) });
      return found.energyCost / (found.usedElectricity / 3.6e6);
    };
    expect(priceOf((each, hour) => each === 1 && hour === 16)).toBeCloseTo(0.5, 12);
    expect(priceOf((each, hour) => each === 1 && hour === 20)).toBeCloseTo(0.2, 12);
    expect(priceOf((each, hour) => each === 3 && hour === 16)).toBeCloseTo(0.2, 12);
    expect(priceOf((_, hour) => hour === 22)).toBeCloseTo(0.1, 12);
    expect(priceOf((_, hour) => hour === 5)).toBeCloseTo(0.1, 12);
    expect(priceOf((_, hour) => hour === 6)).toBeCloseTo(0.2, 12);
    expect(priceOf((_, hour) => hour >= 4 && hour < 8)).toBeCloseTo(0.15, 12);
  });

  it('knows the months of a usual and of a leap year', () => {
    for (const length of [8760, 8784]) {
      const used = cost(hours(() => true, length)).months?.map((each) => each.usedElectricity / 3.6e6 / 24);
      [31, length === 8784 ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31].forEach((days, index) => expect(used?.[index]).toBeCloseTo(days, 9));
    }
  });

  it('bills the highest hour of all parts together, month by month', () => {
    const spike = hours((_, __, place) => place === 100 || place === 5000);
    if (spike.from !== 'hours') throw new Error('hours');
    const auxiliaryDraws = spike.unitDraws.map((_, place) => electricWatts(place === 100 ? 2000 : place === 200 ? 2500 : 0));
    const highest = cost({ ...spike, auxiliaryDraws }, byTime).months?.map(({ highestPower }) => highestPower);
    expect(highest).toEqual([3000, 0, 0, 0, 0, 0, 1000, 0, 0, 0, 0, 0]);
  });

  it('says when the highest hours weigh much and when prices are old', () => {
    const tariff = { ...flat, demandPrice: perKilowatt(20) };
    expect(cost(months, tariff).findings.map(({ code }) => code)).toEqual(['demand-charge-large']);
    const codes = (dateYear: number): readonly string[] => electricityCost({ use: year, tariff: flat, dateYear }).findings.map(({ code }) => code);
    expect(codes(2028)).toEqual([]);
    expect(codes(2029)).toEqual(['prices-old']);
  });
});

const uses = fc
  .array(fc.double({ min: 0, max: 3000, noNaN: true }), { minLength: 12, maxLength: 12 })
  .map((each): ElectricityUse => ({ from: 'months', months: each.map((used) => month(used, used * 3)) }));
const pricings = fc.constantFrom<EnergyPricing>(flat.pricing, blocks);

describe('properties', () => {
  it('cost is linear in price', () => {
    fc.assert(
      fc.property(uses, pricings, fc.double({ min: 0, max: 20, noNaN: true }), (use, pricing, times) => {
        const charges = (by: number): Partial<Tariff> => ({ monthlyCharge: money(9 * by), demandPrice: perKilowatt(4 * by), taxRatio: ratio(0.2) });
        const one = cost(use, { ...flat, pricing, ...charges(1) });
        const many = cost(use, { ...flat, pricing: scaled(pricing, times), ...charges(times) });
        expect(Math.abs(many.totalCost - times * one.totalCost)).toBeLessThanOrEqual(1e-12 * times * one.totalCost + 1e-290);
      }),
    );
  });

  it('sums are exact to the last bit, months to rounding', () => {
    fc.assert(
      fc.property(uses, pricings, (use, pricing) => {
        const found = cost(use, { ...byTime, pricing });
        expect(found.parts.reduce((sum, part) => sum + part.energyCost, 0)).toBe(found.energyCost);
        expect(found.parts.reduce((sum, part) => sum + part.usedElectricity, 0)).toBe(found.usedElectricity);
        expect(found.totalCost).toBe(found.energyCost + found.fixedCost + found.demandCost + found.taxCost);
        const ofMonths = (found.months ?? []).reduce((sum, each) => sum + each.energyCost, 0);
        expect(Math.abs(ofMonths - found.energyCost)).toBeLessThanOrEqual(1e-13 * found.energyCost);
      }),
    );
  });

  it('a use by the hour costs what the same by months does under one price', () => {
    const use = hours((each, hour) => each < 4 || hour < 5);
    const known = cost(use).months ?? [];
    const again: ElectricityUse = { from: 'months', months: known.map((each) => ({ unitElectricity: each.usedElectricity })) };
    expect(cost(again).totalCost).toBeCloseTo(cost(use).totalCost, 8);
  });

  it('no use costs what is fixed, and has no mean price', () => {
    const none = cost({ from: 'year', unitElectricity: electricKilowattHours(0) }, { ...flat, monthlyCharge: money(5) });
    expect(none.totalCost).toBe(60);
    expect(none).not.toHaveProperty('meanEnergyPrice');
  });
});

describe('refusals', () => {
  const full = { ...byTime, pricing: blocks };
  it('name the number', () => {
    const example: ElectricityCostInput = { use: months, tariff: full, dateYear: 2026 };
    // Hours are left to the test below: a fault in each of 8760 takes long.
    const faults = faultsOf(electricityCost, electricityCostInputShape, example, { more: [{ use: year, tariff: flat }] });
    expect(
      faults.filter((fault) => !/^no example has (?:use\.(?:from=hours|\w+Draws)|tariff\.pricing\.(?:type=by time|windows))/u.test(fault)),
    ).toEqual([]);
  });

  it('reach the windows', () => {
    const use = hours(() => true);
    const run = ({ tariff }: Pick<ElectricityCostInput, 'tariff'>): unknown => electricityCost({ use, tariff });
    const more = [full, flat].map((tariff) => ({ tariff }));
    refuses(run, { tariff: tariffShape }, { tariff: byTime }, { more });
  });

  it('reach the hours', () => {
    const draws = hours(() => true);
    if (draws.from !== 'hours') throw new Error('hours');
    const with5 = (value: unknown): typeof draws.unitDraws => draws.unitDraws.map((each, place) => (place === 5 ? (value as never) : each));
    for (const wrong of [Number.NaN, -1, Infinity, 1e308, null, undefined, '1000']) {
      expect(() => cost({ ...draws, unitDraws: with5(wrong) })).toThrow('use.unitDraws.5');
      expect(() => cost({ ...draws, auxiliaryDraws: with5(wrong) })).toThrow('use.auxiliaryDraws.5');
    }
    expect(() => cost({ ...draws, unitDraws: draws.unitDraws.slice(1) })).toThrow('use.unitDraws: 8759');
    expect(() => cost({ ...draws, unitDraws: [...draws.unitDraws, electricWatts(1)] })).toThrow('use.unitDraws: 8761');
    expect(() => cost({ ...draws, loadSideDraws: draws.unitDraws.slice(1) })).toThrow('use.loadSideDraws: 8759');
    expect(() => cost({ ...draws, loadSideDraws: [...draws.unitDraws, ...draws.unitDraws.slice(0, 24)] })).toThrow('use.loadSideDraws: 8784');
  });

  it('come for a use told too coarsely', () => {
    expect(() => cost(year, byTime)).toThrow('use.from: year');
    expect(() => cost(months, byTime)).toThrow('use.from: months');
    expect(() => cost(year, { ...flat, pricing: blocks })).toThrow('use.from: year');
    expect(() => cost(year, { ...flat, demandPrice: perKilowatt(4) })).toThrow('use.from: year');
  });

  it('come for blocks that do not rise', () => {
    const pricing: EnergyPricing = { ...blocks, blocks: [...blocks.blocks].reverse() };
    expect(() => cost(months, { ...flat, pricing })).toThrow('tariff.pricing.blocks.1.blockLimit');
  });
});
