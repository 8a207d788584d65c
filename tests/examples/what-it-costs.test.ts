import { execFileSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';

const root = new URL('../../', import.meta.url);
const text = execFileSync(process.execPath, ['scripts/run.mjs', 'examples/what-it-costs.ts'], { cwd: root, encoding: 'utf8' });
const [metric = '', us = ''] = text.split(/(?=^What it costs)/mu);

/** The numbers of the first line that begins with a name, signs of print taken for minus. */
const numbersOf = (page: string, name: string): readonly number[] => {
  const line = page.split('\n').find((each) => each.trimStart().startsWith(name)) ?? '';
  return [...line.slice(line.indexOf(name) + name.length).matchAll(/[-−]?\d+(?:\.\d+)?/gu)].map(([number]) => Number(number.replace('−', '-')));
};
/** Lengths as they are printed: pipe, percent short, margin, auxiliary, more a year, saved digging. */
const lengths = (page: string): readonly (readonly number[])[] =>
  page
    .split('\n')
    .filter((line) => line.includes('% short)'))
    .map((line) => [...line.matchAll(/[-−]?\d+(?:\.\d+)?/gu)].map(([number]) => Number(number.replace('−', '-'))));

describe.each([
  ['metric', metric, { electricity: 0.28, fixed: 96, tax: 0, oil: 1.15, oilUpkeep: 280, gas: 0.11, gasUpkeep: 320, pipe: 16, unit: 21_000 }],
  ['us', us, { electricity: 0.16, fixed: 144, tax: 0.03, oil: 3.8, oilUpkeep: 250, gas: 1.4 / 29.3071, gasUpkeep: 220, pipe: 5, unit: 19_000 }],
] as const)('the worksheet in %s units', (system, page, price) => {
  const [heat = 0, performance = 0] = numbersOf(page, 'Ways to make the');
  const [ground = 0, groundCost = 0, , groundEmissions = 0] = numbersOf(page, 'ground source');

  it('says that its prices are an example, and of which year and currency', () => {
    expect(page).toContain('invented example of 2026');
    expect(page).toContain(system === 'us' ? 'USD' : 'EUR');
  });

  it('adds up what the electricity costs', () => {
    const parts = ['unit', 'circulator', 'auxiliary'].map((part) => numbersOf(page, part));
    const used = parts.reduce((sum, [each = 0]) => sum + each, 0);
    const [total = 0, cost = 0] = numbersOf(page, 'all of it');
    // Each printed number is rounded to one.
    expect(Math.abs(used - total)).toBeLessThanOrEqual(2);
    expect(Math.abs((total * price.electricity + price.fixed) * (1 + price.tax) - cost)).toBeLessThanOrEqual(1);
    for (const [each = 0, amount = 0] of parts) expect(Math.abs(each * price.electricity - amount)).toBeLessThanOrEqual(1);
  });

  it('prices the same heat by each fuel', () => {
    expect(heat / performance / ground).toBeCloseTo(1, 2);
    expect(Math.abs(ground * price.electricity - groundCost)).toBeLessThanOrEqual(1);
    const [litres = 0, oilCost = 0] = numbersOf(page, system === 'us' ? 'oil' : 'oil, condensing');
    // 10.684 kWh to the litre and 40.444 to the gallon, the efficiency of the example on the higher heating value.
    expect((litres * (system === 'us' ? 40.4438 * 0.85 : 10.6841 * 0.95 * 0.945)) / heat).toBeCloseTo(1, 3);
    expect(Math.abs(litres * price.oil + price.oilUpkeep - oilCost)).toBeLessThanOrEqual(1.5);
    const [gas = 0, gasCost = 0, , gasEmissions = 0] = numbersOf(page, 'gas by the pipe');
    expect(gas * 0.92).toBeCloseTo(heat, -1);
    expect(Math.abs(gas * price.gas + price.gasUpkeep - gasCost)).toBeLessThanOrEqual(1.5);
    expect(gasEmissions).toBeCloseTo((gas * 0.181048) / 1000, 1);
    expect(numbersOf(page, 'electric heaters')[0]).toBe(heat);
    expect(groundEmissions).toBeCloseTo((ground * (system === 'us' ? 0.37 : 0.32)) / 1000, 1);
  });

  it('saves the difference of what the years cost, more with higher prices', () => {
    const saved = ['low', 'central', 'high'].map((scenario) => {
      const [alternative = 0, boiler = 0, saving = 0] = numbersOf(page, `${scenario} energy prices`);
      expect(Math.abs(boiler - alternative - saving)).toBeLessThanOrEqual(1);
      return saving;
    });
    const [worst = 0, best = 0] = numbersOf(page, 'worst and best mixture');
    expect([worst, ...saved, best]).toEqual([worst, ...saved, best].sort((a, b) => a - b));
    // A loop of fifty years is worth thirty of them after twenty.
    const loop = (system === 'us' ? 1417.32 : 432) * price.pipe;
    const [, , worth = 0] = numbersOf(page, 'Over');
    expect(Math.abs(worth - 0.6 * loop)).toBeLessThanOrEqual(1);
    // Unit and loop, twenty years of electricity at its price of today, and what is left, brought back at 3 %.
    const discounted = Array.from({ length: 20 }, (_, year) => 1.03 ** -(year + 1)).reduce((sum, each) => sum + each, 0);
    const [central = 0] = numbersOf(page, 'central energy prices');
    // The yearly cost is printed to one, and fifteen of it are summed.
    expect(Math.abs(price.unit + loop + groundCost * discounted - worth * 1.03 ** -20 - central)).toBeLessThanOrEqual(9);
  });

  it('counts pipe saved at its price, and takes more electricity the shorter the loop', () => {
    const rows = lengths(page);
    const planned = numbersOf(page, system === 'us' ? '1417 ft' : '432 m');
    expect(rows.map(([, short]) => short)).toEqual([30, 20, 10]);
    for (const [pipe = 0, , margin = 0, auxiliary = 0, more = 0, saved = 0] of rows) {
      expect(Math.abs(((system === 'us' ? 1417.32 : 432) - pipe) * price.pipe - saved)).toBeLessThanOrEqual(price.pipe / 2 + 1);
      expect(margin).toBeLessThan(0);
      expect(auxiliary).toBeGreaterThan(planned[1] ?? Infinity);
      // The auxiliary heater alone takes so much more; the unit in colder fluid takes the rest.
      expect(more).toBeGreaterThan((auxiliary - (planned[1] ?? 0)) * price.electricity - 1);
    }
    expect(rows.map(([, , , , more]) => more)).toEqual(rows.map(([, , , , more]) => more ?? 0).sort((a, b) => b - a));
    expect(page).toContain('it stops on its protection');
  });
});
