import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadAt, monthlyLoads, monthlyLoadsInputShape } from '../../src/building/index.js';
import { celsius, kelvinDifference, type Temperature, watts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { continental, cooling, evenSpread, heating, maritime } from './houses.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const years = fc.record({
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
});
type Year = Parameters<typeof monthlyLoads>[0];
const yearOf = ({ spread, ...rest }: { readonly [K in keyof Year]: Year[K] | undefined } & Pick<Year, 'signature' | 'meanOutdoor'>): Year =>
  spread === undefined ? rest : { ...rest, spread };
const warmed = (means: readonly Temperature[], by: number): readonly Temperature[] => means.map((mean) => celsius(mean + by));
const codes = (year: Year): readonly string[] => monthlyLoads(year).findings.map(({ code, level }) => `${code} ${level}`);
describe('monthlyLoads', () => {
  it('is slope times degree days, and a year is its months', () => {
    fc.assert(
      fc.property(years, (year) => {
        const { months, energy, degreeDays } = monthlyLoads(yearOf(year));
        for (const { degreeDays: days, meanLoad, energy: ofMonth, time, loadTime } of months) {
          expect(Math.abs(ofMonth - year.signature.slope * days * 86_400)).toBeLessThanOrEqual(1e-12 * ofMonth);
          expect(Math.abs(ofMonth - meanLoad * time)).toBeLessThanOrEqual(1e-12 * ofMonth);
          expect(loadTime).toBeGreaterThanOrEqual(0);
          expect(loadTime).toBeLessThanOrEqual(time);
        }
        const total = months.reduce((sum, month) => sum + month.energy, 0);
        expect(Math.abs(energy - total)).toBeLessThanOrEqual(1e-12 * total);
        expect(Math.abs(energy - year.signature.slope * degreeDays * 86_400)).toBeLessThanOrEqual(1e-12 * energy);
      }),
    );
  });

  it('has as many hours in the year as a year has', () => {
    expect(monthlyLoads({ signature: heating, meanOutdoor: continental }).months.reduce((sum, { time }) => sum + time, 0)).toBe(8760 * 3600);
  });

  it('without spread is the load at the mean', () => {
    const { months } = monthlyLoads({ signature: heating, meanOutdoor: continental, spread: evenSpread(0) });
    for (const { meanOutdoor, meanLoad } of months) expect(meanLoad).toBeCloseTo(loadAt(heating, meanOutdoor), 9);
  });

  it('never asks for more heat, nor for less cold, where it is warmer', () => {
    fc.assert(
      fc.property(years, between(0.01, 3), (year, by) => {
        const given = yearOf(year);
        const spread = given.spread ?? evenSpread(5);
        const before = monthlyLoads({ ...given, spread }).months;
        const after = monthlyLoads({ ...given, spread, meanOutdoor: warmed(year.meanOutdoor, by) }).months;
        after.forEach(({ meanLoad }, index) => {
          const change = (meanLoad - (before[index]?.meanLoad ?? Number.NaN)) * (year.signature.mode === 'heating' ? -1 : 1);
          expect(change).toBeGreaterThanOrEqual(-1e-9);
        });
      }),
    );
  });

  it('says which distribution it took', () => {
    expect(monthlyLoads({ signature: heating, meanOutdoor: continental }).distribution).toBe('logistic');
    expect(monthlyLoads({ signature: heating, meanOutdoor: continental, spread: evenSpread(6) }).distribution).toBe('normal');
  });

  it('mentions a spread told from means, and warns of it by a mild sea', () => {
    expect(codes({ signature: heating, meanOutdoor: continental })).toEqual(['spread-told-from-means note']);
    expect(codes({ signature: heating, meanOutdoor: maritime })).toEqual(['spread-told-from-means warning']);
    expect(codes({ signature: heating, meanOutdoor: continental, spread: evenSpread(6) })).toEqual([]);
  });

  it('warns of a design temperature that is of another place, in either direction', () => {
    expect(codes({ signature: heating, meanOutdoor: warmed(continental, -12), spread: evenSpread(6) })).toEqual(['design-outdoor-doubtful warning']);
    expect(codes({ signature: heating, meanOutdoor: warmed(continental, 20), spread: evenSpread(6) })).toEqual(['design-outdoor-doubtful warning']);
    expect(codes({ signature: cooling, meanOutdoor: warmed(continental, 10), spread: evenSpread(5) })).toEqual(['design-outdoor-doubtful warning']);
    expect(codes({ signature: cooling, meanOutdoor: continental, spread: evenSpread(5) })).toEqual([]);
  });

  it('stays finite at the edges of what it accepts', () => {
    const edge = { ...heating, slope: watts(1e9) / 1 } as typeof heating;
    expect(monthlyLoads({ signature: edge, meanOutdoor: warmed(continental, -69), spread: evenSpread(50) }).energy).toBeLessThan(Infinity);
  });

  it('refuses bad input by name', () => {
    refuses<Year>(monthlyLoads, monthlyLoadsInputShape, { signature: heating, meanOutdoor: continental, spread: evenSpread(6) });
    expect(() => monthlyLoads({ signature: heating, meanOutdoor: continental, spread: evenSpread(6).slice(1) })).toThrow('spread');
    expect(() => monthlyLoads({ signature: heating, meanOutdoor: continental.slice(1) })).toThrow('meanOutdoor');
  });
});
