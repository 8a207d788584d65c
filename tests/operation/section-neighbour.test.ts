import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PipePosition } from '../../src/ground/index.js';
import { neighbourChange, type NeighbourInput, superposedRise } from '../../src/operation/index.js';
import { hours, metres, type PipeResistance, pipeMetres, seconds, type Shape, type Time, wattsPerPipeMetre } from '../../src/units/index.js';
import { layoutOf, responseOf, soilOf } from '../ground/support.js';
import { refuses } from '../support/bad-input.js';
import { between } from './support/levels.js';

const HOURS = 8760;
const heats = Float64Array.from({ length: HOURS }, (_, hour) => {
  const wave = 3000 + 5000 * Math.cos((2 * Math.PI * (hour / 24 - 20)) / 365);
  return Math.abs(wave) < 300 ? 0 : wave;
});
const soil = soilOf(1.5, 6e-7);
const row = (x: number, ...depths: readonly number[]): readonly PipePosition[] => depths.map((depth) => ({ x: metres(x), depth: metres(depth) }));
const beside = (away: number, more: Partial<NeighbourInput> = {}): NeighbourInput => ({
  pipes: row(0, 1.2, 1.8),
  neighbourPipes: row(away, 1.5),
  soil,
  step: hours(1),
  groundHeats: heats,
  neighbourLength: pipeMetres(400),
  ...more,
});

describe('a section beside another', () => {
  it('changes it as the response of both in one layout says, less that of one alone', () => {
    const years = 3;
    const of = { radius: 0.016, conductivity: 1.5, diffusivity: 6e-7 };
    const both = responseOf(
      layoutOf([
        [0, 1.5],
        [3, 1.5],
      ]),
      of,
    );
    const alone = responseOf(layoutOf([[0, 1.5]]), of);
    const riseAfter = (time: Time): PipeResistance => (both.riseAfter(time) - alone.riseAfter(time)) as PipeResistance;
    const days = Array.from({ length: 365 * years }, (_, day) => {
      const from = 24 * (day % 365);
      return wattsPerPipeMetre(-heats.subarray(from, from + 24).reduce((sum, heat) => sum + heat, 0) / 24 / 400);
    });
    const exact = superposedRise({ heat: days, step: hours(24), riseAfter }).slice(-365);
    const { mostChange, day, meanChange, mutualResistance } = neighbourChange(beside(3, { pipes: row(0, 1.5), years }));
    // Half months instead of days: hundredths of a kelvin, and the end of a half month next to the coldest day.
    expect(Math.abs(mostChange - Math.min(...exact))).toBeLessThan(0.01);
    expect(Math.abs(day - 2 - exact.indexOf(Math.min(...exact) as never))).toBeLessThan(16);
    expect(Math.abs(meanChange - exact.reduce((sum, each) => sum + each, 0) / 365)).toBeLessThan(0.01);
    expect(mutualResistance).toBeCloseTo(riseAfter(seconds(years * 365 * 86_400)), 9);
  });

  it('is told of where it is near, and not where it is far', () => {
    const near = neighbourChange(beside(3));
    expect(near.mostChange).toBeLessThan(-0.4);
    expect(near.findings).toEqual([
      { code: 'section-neighbour', level: 'warning', values: { change: near.mostChange, day: near.day }, source: 'ingersoll1954' },
    ]);
    expect(neighbourChange(beside(10)).findings).toEqual([]);
  });

  it('is colder by more the nearer, the more heat and the more years, and most below a sealed surface', () => {
    const away = fc.tuple(between(1.5, 20), between(0.2, 5), between(0.2, 3));
    fc.assert(
      fc.property(away, fc.integer({ min: 1, max: 12 }), ([distance, further, times], years) => {
        const cold = heats.map((heat) => Math.max(heat, 0));
        const change = (more: Partial<NeighbourInput>, far = distance): number =>
          neighbourChange(beside(far, { groundHeats: cold, years, ...more })).meanChange;
        const plain = change({});
        expect(plain).toBeLessThan(0);
        expect(change({}, distance + further)).toBeGreaterThan(plain);
        expect(change({ groundHeats: cold.map((heat) => times * heat) }) / plain).toBeCloseTo(times, 9);
        expect(change({ years: years + 1 })).toBeLessThanOrEqual(plain);
        expect(change({ sealedSurface: true })).toBeLessThan(plain);
      }),
      { numRuns: 20 },
    );
  });

  it('does to another what that does to it, per heat of a metre', () => {
    const [one, other] = [row(0, 1, 1.7), row(4, 1.4, 2, 2.2)];
    const there = neighbourChange(beside(0, { pipes: one, neighbourPipes: other }));
    const back = neighbourChange(beside(0, { pipes: other, neighbourPipes: one }));
    // Means over the pipes of the one and sums over those of the other.
    expect(there.mutualResistance / back.mutualResistance).toBeCloseTo(3 / 2, 9);
  });

  it('refuses bad input by name', () => {
    const shape: Shape<Omit<NeighbourInput, 'groundHeats'>> = {
      pipes: { list: { x: 'length', depth: 'length' } },
      neighbourPipes: { list: { x: 'length', depth: 'length' } },
      soil: { conductivity: 'conductivity', diffusivity: 'diffusivity' },
      sealedSurface: { optional: 'flag' },
      step: 'time',
      neighbourLength: 'pipe length',
      years: { optional: 'count' },
    };
    const { groundHeats, ...example } = beside(4, { years: 2, sealedSurface: false });
    refuses((input) => neighbourChange({ ...input, groundHeats }), shape, example);
    expect(() => neighbourChange(beside(0.5))).toThrow(/neighbourPipes/);
    expect(() => neighbourChange(beside(4, { groundHeats: [1, Number.NaN, ...new Array<number>(30).fill(1)] }))).toThrow(/groundHeats\.1/);
    expect(() => neighbourChange(beside(4, { groundHeats: [1, 2, 3] }))).toThrow(/groundHeats\.length/);
  });
});
