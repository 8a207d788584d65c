import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hours } from '../../../src/units/index.js';
import { layoutOf, responseOf } from '../../ground/support.js';
import { convolve, exactRises } from './convolution.js';
import { fourier, padded } from './fourier.js';

const TWENTY_YEARS = 175_200;

describe('the transform of the tests', () => {
  it('is the sum that it stands for, and comes back', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: 16, maxLength: 16 }), (course) => {
        const transformed = padded(Float64Array.from(course), 16);
        fourier(transformed);
        for (let k = 0; k < 16; k += 1) {
          const angle = (j: number): number => (-2 * Math.PI * j * k) / 16;
          expect(transformed.re[k]).toBeCloseTo(
            course.reduce((sum, each, j) => sum + each * Math.cos(angle(j)), 0),
            11,
          );
          expect(transformed.im[k]).toBeCloseTo(
            course.reduce((sum, each, j) => sum + each * Math.sin(angle(j)), 0),
            11,
          );
        }
        fourier(transformed, 'back');
        course.forEach((each, k) => {
          expect((transformed.re[k] ?? Number.NaN) / 16).toBeCloseTo(each, 12);
        });
      }),
      { numRuns: 20 },
    );
    expect(() => {
      fourier(padded(new Float64Array(3), 12));
    }).toThrow('power of two');
  });
});

describe('the convolution of the tests', () => {
  it('is the sum over all steps, written out', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -30, max: 30, noNaN: true }), { minLength: 1, maxLength: 60 }), (course) => {
        const rise = (steps: number): number => Math.log1p(steps);
        const rises = Float64Array.from(course, (_, k) => rise(k + 1));
        convolve(Float64Array.from(course), rises).forEach((change, n) => {
          const sum = course.slice(0, n + 1).reduce((total, each, j) => total + each * (rise(n - j + 1) - rise(n - j)), 0);
          expect(change).toBeCloseTo(sum, 11);
        });
      }),
      { numRuns: 40 },
    );
  });

  it('gives back the response for a lasting heat, to the last hour of twenty years', () => {
    const rises = Float64Array.from({ length: TWENTY_YEARS }, (_, k) => Math.log1p(k + 1));
    const changes = convolve(new Float64Array(TWENTY_YEARS).fill(25), rises);
    const worst = changes.reduce((most, change, k) => Math.max(most, Math.abs(change - 25 * (rises[k] ?? Number.NaN))), 0);
    expect(worst).toBeLessThan(1e-9);
  });
});

describe('rises read between nodes', () => {
  it.each([
    ['one pipe', layoutOf([[0, 1.8]])],
    [
      'four trenches of four',
      layoutOf(
        [
          [-0.3, 1.2],
          [0.3, 1.2],
          [-0.3, 1.8],
          [0.3, 1.8],
        ],
        4,
        3,
      ),
    ],
  ])('of %s are within 1e-7 of the response itself, at hours over twenty years', (_, layout) => {
    const response = responseOf(layout, { radius: 0.0167, conductivity: 1.5, diffusivity: 6e-7 });
    const rises = exactRises(response, hours(1), TWENTY_YEARS);
    let worst = 0;
    for (let hour = 1; hour <= TWENTY_YEARS; hour += Math.ceil(hour / 200)) {
      worst = Math.max(worst, Math.abs((rises[hour - 1] ?? Number.NaN) / response.riseAfter(hours(hour)) - 1));
    }
    expect(worst).toBeLessThan(1e-7);
  });
});
