import { describe, expect, it } from 'vitest';
import { compareLifeCycles, electricityCost, fuelUse } from '../../src/cost/index.js';
import { describeFinding } from '../../src/report/index.js';
import { electricWatts, kilowattHours, money, percentPerYear, perKilowattHour, ratio } from '../../src/units/index.js';
import { gasBoiler } from './support.js';

const terms = { discountRate: percentPerYear(3), years: 10 };

describe('an extra cost that does not come back', () => {
  it('is told as what is paid more at the start, also where replacements and what is left outweigh it', () => {
    const baseline = { label: 'boiler', firstCost: money(9000), yearlyEnergyCost: money(1500) };
    const alternative = { label: 'loop', firstCost: money(29_000), yearlyEnergyCost: money(1400), residualValue: money(28_000) };
    const { extraCost, findings } = compareLifeCycles({ ...terms, baseline, alternative });
    expect(extraCost).toBeLessThan(0);
    const [found] = findings.filter(({ code }) => code === 'payback-not-reached');
    expect(found?.values).toMatchObject({ extraCost: 20_000, yearlySaving: 100 });
  });

  it('is told of one year as of one', () => {
    const plan = { label: 'a', firstCost: money(0), yearlyEnergyCost: money(100) };
    const [found] = compareLifeCycles({
      ...terms,
      years: 1,
      baseline: plan,
      alternative: { ...plan, firstCost: money(500), yearlyEnergyCost: money(90) },
    }).findings;
    expect(found === undefined ? '' : describeFinding(found, 'us')).toContain('within one year');
  });
});

describe('the name of a way of heating', () => {
  it('stands in what is said of its efficiency', () => {
    const { findings } = fuelUse({ energy: kilowattHours(1000), source: { ...gasBoiler, label: 'old boiler', efficiency: ratio(1.2) } });
    expect(findings.map((finding) => describeFinding(finding, 'metric'))).toEqual([
      expect.stringMatching(/^The efficiency of “old boiler”, 1\.20 on/u),
    ]);
  });
});

it('hours between a year and a leap year are neither', () => {
  const unitDraws = Array.from({ length: 8770 }, () => electricWatts(1));
  const tariff = { currency: 'EUR', priceYear: 2026, pricing: { type: 'flat', energyPrice: perKilowattHour(0.3) } } as const;
  expect(() => electricityCost({ use: { from: 'hours', unitDraws }, tariff })).toThrow(
    'use.unitDraws: 8770 (count) is not allowed; allowed: 8760 hours or',
  );
});
