import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { energySignature, monthlyLoads, runFractions, runFractionsInputShape } from '../../src/building/index.js';
import { celsius, kelvinDifference, kilowatts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { loadFixture } from '../support/fixture.js';
import { continental, cooling, evenSpread, heating } from './houses.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const loadsOf = fc
  .record({
    meanOutdoor: fc.array(
      between(-40, 40).map((mean) => celsius(mean)),
      { minLength: 12, maxLength: 12 },
    ),
    spread: fc.option(
      fc.array(
        between(0, 15).map((spread) => kelvinDifference(spread)),
        { minLength: 12, maxLength: 12 },
      ),
      { nil: undefined },
    ),
    signature: fc.constantFrom(heating, cooling),
  })
  .map(({ spread, ...rest }) => monthlyLoads(spread === undefined ? rest : { ...rest, spread }));
const january = monthlyLoads({ signature: heating, meanOutdoor: continental, spread: evenSpread(6) });

describe('runFractions', () => {
  it('splits the load of every month into what the unit meets and what it does not', () => {
    fc.assert(
      fc.property(loadsOf, between(0.1, 100), (loads, capacity) => {
        const { months, metEnergy, unmetEnergy, coveredShare } = runFractions({ loads, capacity: kilowatts(capacity) });
        months.forEach(({ runFraction, runTime, meanMet, meanUnmet }, index) => {
          const { meanLoad = Number.NaN, time = Number.NaN } = loads.months[index] ?? {};
          expect(runFraction).toBeGreaterThanOrEqual(0);
          expect(runFraction).toBeLessThanOrEqual(1);
          expect(Math.abs(runFraction * kilowatts(capacity) + meanUnmet - meanLoad)).toBeLessThanOrEqual(1e-12 * meanLoad);
          expect(Math.abs(meanMet + meanUnmet - meanLoad)).toBeLessThanOrEqual(1e-12 * meanLoad);
          expect(runTime).toBe(runFraction * time);
        });
        expect(Math.abs(metEnergy + unmetEnergy - loads.energy)).toBeLessThanOrEqual(1e-12 * loads.energy);
        expect(coveredShare).toBeGreaterThanOrEqual(0);
        expect(coveredShare).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('runs less and leaves less with more capacity', () => {
    fc.assert(
      fc.property(loadsOf, between(0.5, 30), between(1.001, 2), (loads, capacity, more) => {
        const small = runFractions({ loads, capacity: kilowatts(capacity) });
        const large = runFractions({ loads, capacity: kilowatts(capacity * more) });
        expect(large.designRunFraction).toBeLessThanOrEqual(small.designRunFraction + 1e-12);
        expect(large.unmetEnergy).toBeLessThanOrEqual(small.unmetEnergy * (1 + 1e-12));
        expect(large.coveredShare).toBeGreaterThanOrEqual(small.coveredShare - 1e-12);
      }),
    );
  });

  it('is mean load over capacity where the capacity never binds', () => {
    const { months } = runFractions({ loads: january, capacity: kilowatts(100) });
    months.forEach(({ runFraction }, index) => expect(runFraction).toBeCloseTo((january.months[index]?.meanLoad ?? Number.NaN) / 1e5, 12));
  });

  it('is one half where the mean lies midway between the two balance points, whatever the spread', () => {
    const { months } = runFractions({
      loads: monthlyLoads({
        signature: heating,
        meanOutdoor: continental.map(() => celsius(16 - 9 / 2 / (12 / 31))),
        spread: continental.map((_, k) => kelvinDifference(1 + k)),
      }),
      capacity: kilowatts(9),
    });
    for (const { runFraction } of months) expect(runFraction).toBeCloseTo(0.5, 12);
  });

  it('grows with the spread by m [φ(Z bal) − φ(Z bp)]/C', () => {
    const at = (spread: number): number =>
      runFractions({ loads: monthlyLoads({ signature: heating, meanOutdoor: continental, spread: evenSpread(spread) }), capacity: kilowatts(9) })
        .months[4]?.runFraction ?? Number.NaN;
    const density = (z: number): number => Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI);
    const slope = ((12 / 31) * (density((16 - 14) / 6) - density((-7.25 - 14) / 6))) / 9;
    expect((at(6.001) - at(5.999)) / 0.002).toBeCloseTo(slope, 7);
  });

  it('names the month with the largest fraction, the first of equals', () => {
    expect(runFractions({ loads: january, capacity: kilowatts(9) }).designMonth).toBe(1);
    const south = monthlyLoads({ signature: heating, meanOutdoor: [...continental.slice(6), ...continental.slice(0, 6)], spread: evenSpread(6) });
    expect(runFractions({ loads: south, capacity: kilowatts(9) }).designMonth).toBe(7);
    const summer = monthlyLoads({ signature: cooling, meanOutdoor: continental, spread: evenSpread(6) });
    expect(runFractions({ loads: summer, capacity: kilowatts(9) }).designMonth).toBe(7);
  });

  it('covers everything where there is nothing to cover', () => {
    const loads = monthlyLoads({ signature: heating, meanOutdoor: continental.map(() => celsius(30)), spread: evenSpread(0) });
    const { designMonth, designRunFraction, coveredShare, metEnergy } = runFractions({ loads, capacity: kilowatts(9) });
    expect([designMonth, designRunFraction, coveredShare, metEnergy]).toEqual([1, 0, 1, 0]);
  });

  it('mentions auxiliary heat where capacity is short, and warns where it is much', () => {
    const codes = (capacity: number): readonly string[] =>
      runFractions({ loads: january, capacity: kilowatts(capacity) }).findings.map(({ code, level }) => `${code} ${level}`);
    expect(codes(12)).toEqual([]);
    expect(codes(10)).toEqual(['capacity-short note']);
    expect(codes(5)).toEqual(['capacity-short warning']);
  });

  it('is 0.021 below the hours of one April that no loop is sized by: its warm spell is not normal', () => {
    const rows = loadFixture('load-weather-checks').rows.filter((row) => row.text('station') === 'Chicago OHare TMY3');
    const signature = energySignature({
      mode: 'cooling',
      designLoad: kilowatts(8),
      designOutdoor: celsius(33),
      indoor: celsius(25),
      balancePoint: celsius(20),
    });
    const loads = monthlyLoads({
      signature,
      meanOutdoor: rows.map((row) => celsius(row.number('mean_C'))),
      spread: rows.map((row) => kelvinDifference(row.number('sigma_hourly_K'))),
    });
    const april = runFractions({ loads, capacity: kilowatts(9) }).months[3]?.runFraction ?? Number.NaN;
    expect((rows[3]?.number('F_cool_hourly') ?? Number.NaN) - april).toBeCloseTo(0.0212, 4);
  });

  it('refuses bad input by name', () => {
    const { findings: _, ...loads } = january;
    const derived = ['degreeDays', 'loadTime', 'meanLoad', 'energy'];
    const places = ['degreeDays', 'energy', ...loads.months.flatMap((_month, index) => derived.map((field) => `months.${String(index)}.${field}`))];
    const unused = Object.fromEntries(places.map((place) => [`loads.${place}`, 'recomputed from signature, mean and spread']));
    refuses(runFractions, runFractionsInputShape, { loads, capacity: kilowatts(9) }, { unused });
  });
});
