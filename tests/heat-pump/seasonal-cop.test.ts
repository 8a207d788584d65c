import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  declaredSeasonalCop,
  type DeclaredSeasonalCopInput,
  declaredSeasonalCopInputShape,
  type En14825Climate,
  en14825Season,
  type FullCapacity,
  type SeasonalCop,
  seasonalCop,
} from '../../src/heat-pump/index.js';
import { celsius, fraction, kilowatts, ratio, type Temperature } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const climates: fc.Arbitrary<En14825Climate> = fc.constantFrom('average', 'warmer', 'colder');
const constant = (capacity: number, cop: number) => (): FullCapacity => ({ capacity: kilowatts(capacity), cop: ratio(cop) });
const near = (found: number, expected: number): void => {
  expect(Math.abs(found / expected - 1)).toBeLessThan(1e-12);
};

/** What every season must keep. */
const demandSound = ({ bins, energy, unmetEnergy, unitElectricity, activeCop, netCop, designLoad }: SeasonalCop): void => {
  bins.forEach(({ load, capacity, unmet }) => {
    expect(unmet).toBeGreaterThanOrEqual(0);
    expect(Math.abs(Math.min(load, capacity) + unmet - load)).toBeLessThanOrEqual(1e-12 * designLoad);
  });
  near(
    bins.reduce((sum, { time, load }) => sum + time * load, 0),
    energy,
  );
  near(energy / (unitElectricity + unmetEnergy), activeCop);
  expect(activeCop).toBeLessThanOrEqual(Math.max(1, netCop) * (1 + 1e-12));
};

const declared: DeclaredSeasonalCopInput = {
  climate: 'average',
  designLoad: kilowatts(9),
  points: [
    { outdoor: celsius(7), capacity: kilowatts(8), cop: ratio(4.6) },
    { outdoor: celsius(-10), capacity: kilowatts(5), cop: ratio(3) },
    { outdoor: celsius(2), capacity: kilowatts(7), cop: ratio(4) },
    { outdoor: celsius(12), capacity: kilowatts(9), cop: ratio(5.1) },
  ],
  loadShare: fraction(0.9),
  operationLimit: celsius(-7),
  aboveWarmest: 'held',
};
const { operationLimit: _, ...always } = declared;

describe('seasonalCop', () => {
  it('is the COP where nothing is lost and nothing is short', () => {
    fc.assert(
      fc.property(climates, between(1, 100), between(1, 3), between(1.1, 9), (climate, load, size, cop) => {
        const unitAt = constant(load * size, cop);
        near(seasonalCop({ climate, designLoad: kilowatts(load), unitAt, loadShare: fraction(1) }).activeCop, cop);
      }),
    );
  });

  it('fills exactly with back-up, loses by part load, and gains by capacity without such loss', () => {
    fc.assert(
      fc.property(climates, between(0.05, 3), between(1.5, 9), between(0.5, 1), between(1, 2), (climate, size, cop, loadShare, more) => {
        const run = (times: number, share: number): SeasonalCop =>
          seasonalCop({ climate, designLoad: kilowatts(8), unitAt: constant(8 * size * times, cop), loadShare: fraction(share) });
        const season = run(1, loadShare);
        demandSound(season);
        expect(season.netCop).toBeLessThanOrEqual(cop * (1 + 1e-12));
        expect(season.unmetEnergy === 0).toBe(size >= 1);
        expect(run(more, 1).activeCop).toBeGreaterThanOrEqual(run(1, 1).activeCop * (1 - 1e-12));
      }),
    );
  });

  it('takes 0.9 where no share is given, and asks the unit at the bins alone', () => {
    const asked: Temperature[] = [];
    const unitAt = (outdoor: Temperature): FullCapacity => {
      asked.push(outdoor);
      return { capacity: kilowatts(8), cop: ratio(4.4) };
    };
    const season = { climate: 'warmer', designLoad: kilowatts(8), unitAt } as const;
    expect(seasonalCop(season).activeCop).toBe(seasonalCop({ ...season, loadShare: fraction(0.9) }).activeCop);
    expect(Math.min(...asked)).toBe(2);
    expect(Math.max(...asked)).toBe(15);
  });

  it('refuses what no unit gives, by name', () => {
    const season = { climate: 'average', designLoad: kilowatts(8) } as const;
    expect(() => seasonalCop({ ...season, unitAt: constant(NaN, 4) })).toThrow('unitAt.capacity');
    expect(() => seasonalCop({ ...season, unitAt: constant(8, 1) })).toThrow('unitAt.cop');
    expect(() => seasonalCop({ ...season, designLoad: kilowatts(0), unitAt: constant(8, 4) })).toThrow('designLoad');
    expect(() => seasonalCop({ ...season, loadShare: fraction(0.4), unitAt: constant(8, 4) })).toThrow('loadShare');
    // Neither is what the types allow; a caller without a type checker may pass them.
    expect(() => seasonalCop({ ...season, unitAt: undefined as unknown as () => FullCapacity })).toThrow('unitAt');
    expect(() => seasonalCop({ ...season, unitAt: () => undefined as unknown as FullCapacity })).toThrow('unitAt');
  });
});

describe('declaredSeasonalCop', () => {
  it('is the COP where every point has it, nothing is lost and nothing is short', () => {
    fc.assert(
      fc.property(climates, between(1, 100), between(1.1, 9), (climate, load, cop) => {
        const places = [en14825Season(climate).designOutdoor, 4, 7, 12];
        const points = places.map((outdoor) => ({ outdoor: celsius(outdoor), capacity: kilowatts(load), cop: ratio(cop) }));
        near(declaredSeasonalCop({ climate, designLoad: kilowatts(load), points, loadShare: fraction(1) }).activeCop, cop);
      }),
    );
  });

  it('does not feel a point on the line between two others, where no loss is taken, nor the order of the points', () => {
    fc.assert(
      fc.property(between(2.2, 6.8), between(3, 20), between(3, 9), (outdoor, load, cop) => {
        const at = (place: number) => ({ outdoor: celsius(place), capacity: kilowatts(9 + place / 10), cop: ratio(cop + place / 20) });
        const input = { climate: 'average', designLoad: kilowatts(load), points: [-10, 2, 7, 12].map(at), loadShare: fraction(1) } as const;
        const before = declaredSeasonalCop(input);
        demandSound(before);
        near(declaredSeasonalCop({ ...input, points: [at(outdoor), ...input.points] }).activeCop, before.activeCop);
        expect(declaredSeasonalCop({ ...input, points: input.points.toReversed() })).toEqual(before);
      }),
    );
  });

  it('has no loss where the unit is declared at the load itself, and agrees with the unit bin by bin there', () => {
    const { designOutdoor, partLoadPoints } = en14825Season('average');
    const points = [...partLoadPoints, { outdoor: designOutdoor, loadRatio: 1 }].map(({ outdoor, loadRatio }) => ({
      outdoor,
      capacity: kilowatts(10 * loadRatio),
      cop: ratio(4),
    }));
    const { activeCop, unmetEnergy, energy } = declaredSeasonalCop({ climate: 'average', designLoad: kilowatts(10), points });
    near(activeCop, 4);
    expect(unmetEnergy / energy).toBeLessThan(1e-12);
  });

  it('is off below its limit of operation, without a COP there', () => {
    const { bins } = declaredSeasonalCop(declared);
    expect(bins.filter(({ cop }) => cop === undefined).map(({ outdoor }) => outdoor)).toEqual([-10, -9, -8]);
    expect(bins.every(({ capacity, unmet, load }) => capacity > 0 || unmet === load)).toBe(true);
    expect(declaredSeasonalCop(always).unmetEnergy).toBeLessThan(declaredSeasonalCop(declared).unmetEnergy);
  });

  it('differs a few per mille by how the warm end is taken', () => {
    const ledOn = declaredSeasonalCop({ ...always, aboveWarmest: 'led on' }).activeCop;
    expect(Math.abs(declaredSeasonalCop(always).activeCop / ledOn - 1)).toBeLessThan(0.005);
    expect(declaredSeasonalCop(always).activeCop).not.toBe(ledOn);
  });

  it('refuses points that leave degrees of the season uncovered, stand twice, or lead to nothing', () => {
    const [c, design, b, d] = declared.points;
    const some = (...points: readonly (typeof c)[]): DeclaredSeasonalCopInput => ({ ...always, points: points.filter((each) => each !== undefined) });
    expect(() => declaredSeasonalCop(some(b, c, d))).toThrow('at or below -10 degC');
    expect(() => declaredSeasonalCop(some(design, b, c))).toThrow('point D');
    expect(() => declaredSeasonalCop(some(design, b, b, d))).toThrow('0.1 K apart');
    const falling = some(design, b, { outdoor: celsius(11), capacity: kilowatts(9), cop: ratio(40) }, d);
    expect(() => declaredSeasonalCop({ ...falling, aboveWarmest: 'led on' })).toThrow('hold the warmest');
    expect(declaredSeasonalCop(falling).activeCop).toBeGreaterThan(1);
  });

  it('refuses bad input by name', () => {
    refuses(declaredSeasonalCop, declaredSeasonalCopInputShape, declared);
  });
});
