import { describe, expect, it } from 'vitest';
import { closedFormErrors, energySignature, erbsSpread, hourlyLoads, monthlyLoads, runFractions } from '../../src/building/index.js';
import { weatherOfHours } from '../../src/climate/index.js';
import { celsius, hours, kelvinDifference, kilowatts, type Temperature } from '../../src/units/index.js';
import { loadFixture } from '../support/fixture.js';

/** The hours of four real years. */
const fixture = loadFixture('weather-dry-bulbs');
const FILES = Object.keys(fixture.meta.columns).filter((column) => column !== 'hour');
const years = FILES.map((file): readonly [string, readonly Temperature[]] => [file, fixture.rows.map((row) => celsius(row.number(file)))]);
const signature = energySignature({
  mode: 'heating',
  form: 'anchored at design',
  designLoad: kilowatts(10),
  designOutdoor: celsius(-10),
  indoor: celsius(21),
  balancePoint: celsius(16),
});

describe('closedFormErrors', () => {
  it.each(years)('hold the heat of a year by its hours: %s', (_, temperatures) => {
    const { monthlyMeans, spread } = weatherOfHours(temperatures);
    const byHours = hourlyLoads({ heating: signature, temperatures, step: hours(1) }).heating?.energy ?? Number.NaN;
    const known = monthlyLoads({ signature, meanOutdoor: monthlyMeans, spread });
    const told = monthlyLoads({ signature, meanOutdoor: monthlyMeans });
    const { overYear } = erbsSpread(monthlyMeans);
    for (const [loads, { yearLow = -1, yearHigh }] of [
      [known, closedFormErrors('normal')],
      [told, closedFormErrors('logistic', overYear)],
    ] as const) {
      expect(byHours / loads.energy - 1).toBeGreaterThan(yearLow);
      expect(byHours / loads.energy - 1).toBeLessThan(yearHigh);
    }
  });

  it('are said of the auxiliary heat that a closed form gives', () => {
    const [, temperatures = []] = years[0] ?? [];
    const { monthlyMeans, spread } = weatherOfHours(temperatures);
    const { findings, unmetEnergy } = runFractions({ loads: monthlyLoads({ signature, meanOutdoor: monthlyMeans, spread }), capacity: kilowatts(7) });
    const { unmetEnergyLow, unmetEnergyHigh } = closedFormErrors('normal');
    expect(findings).toMatchObject([
      { code: 'capacity-short', values: { unmetLow: unmetEnergy * (1 + unmetEnergyLow), unmetHigh: unmetEnergy * (1 + unmetEnergyHigh) } },
    ]);
  });

  it('has no lower bound by a mild sea, and refuses bad input', () => {
    expect(closedFormErrors('logistic', kelvinDifference(5))).not.toHaveProperty('yearLow');
    expect(closedFormErrors('logistic').yearLow).toBe(-0.05);
    expect(() => closedFormErrors('uniform' as 'normal')).toThrow('distribution');
    expect(() => closedFormErrors('logistic', kelvinDifference(Number.NaN))).toThrow('overYear');
  });
});
