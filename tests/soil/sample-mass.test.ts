import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { grainySoilShape, leastSampleMass, type GrainySoil } from '../../src/soil/index.js';
import { diameterMillimetres, grams } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const least = (millimetres: number, recordedTo: GrainySoil['recordedTo'] = '1 %'): number =>
  grams.of(leastSampleMass({ largestParticle: diameterMillimetres(millimetres), recordedTo }).leastMass);

describe('leastSampleMass', () => {
  it.each([
    [0.5, 20, 20],
    [2, 20, 20],
    [4.75, 20, 100],
    [9.5, 50, 500],
    [19, 250, 2500],
    [37.5, 1000, 10_000],
    [75, 5000, 50_000],
  ])('of soil up to %d mm has the masses of the table, recalled (ASTM D2216)', (millimetres, coarse, fine) => {
    expect(least(millimetres)).toBeCloseTo(coarse, 9);
    expect(least(millimetres, '0.1 %')).toBeCloseTo(fine, 9);
  });

  // Another rule, for sieving to 1 % (ASTM D6913 as its publisher tells it): at least a hundred particles of the largest size.
  it.each([4.75, 9.5, 19, 37.5, 75])(
    'to 0.1 % is of the size of a hundred balls of %d mm, which the recalled table is not made from',
    (millimetres) => {
      const hundred = 100 * (Math.PI / 6) * (millimetres / 10) ** 3 * 2.65;
      expect(least(millimetres, '0.1 %') / hundred).toBeGreaterThan(0.8);
      expect(least(millimetres, '0.1 %') / hundred).toBeLessThan(7);
    },
  );

  it('never asks for less of a coarser soil, nor for less when more is to be told', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 75, noNaN: true }), fc.double({ min: 0.001, max: 75, noNaN: true }), (one, other) => {
        const [finer, coarser] = [Math.min(one, other), Math.max(one, other)];
        expect(least(finer)).toBeLessThanOrEqual(least(coarser));
        expect(least(finer)).toBeLessThanOrEqual(least(finer, '0.1 %'));
      }),
    );
  });

  it('refuses bad input', () => {
    refuses<GrainySoil>(leastSampleMass, grainySoilShape, { largestParticle: diameterMillimetres(10), recordedTo: '0.1 %' });
    expect(() => leastSampleMass({ largestParticle: diameterMillimetres(10_000) })).toThrow('given as metres');
  });
});
