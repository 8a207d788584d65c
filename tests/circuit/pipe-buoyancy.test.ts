import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pipeBuoyancy, type WetPipe } from '../../src/circuit/index.js';
import { diameterMillimetres, kilograms, kilogramsPerCubicMetre, metres, pascals, type Shape } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const inputShape: Shape<WetPipe> = {
  pipe: { outsideDiameter: 'diameter', insideDiameter: 'diameter' },
  contents: 'density',
  surroundings: 'density',
  ballast: { optional: { weight: 'mass', weightDensity: 'density', allowedRise: 'length', bendingModulus: { optional: 'pressure' } } },
  wallDensity: { optional: 'density' },
};
const density = kilogramsPerCubicMetre;
const pipe = { outsideDiameter: diameterMillimetres(33.4), insideDiameter: diameterMillimetres(27.3) };
const ballast = { weight: kilograms(10), weightDensity: density(1600), allowedRise: metres(0.05), bendingModulus: pascals(4e8) };
const empty: WetPipe = { pipe, contents: density(1.2), surroundings: density(1000), ballast };

/** Rise in the middle of a beam fixed at both ends under an even load, by integrating its moment twice from one end. */
function riseByIntegration(load: number, length: number, stiffness: number): number {
  const steps = 20_000;
  const step = length / steps;
  let [slope, rise] = [0, 0];
  for (let k = 0; k < steps / 2; k += 1) {
    const x = (k + 0.5) * step;
    const moment = (load * length ** 2) / 12 - (load * length * x) / 2 + (load * x ** 2) / 2;
    rise += step * (slope + (step * moment) / (2 * stiffness));
    slope += (step * moment) / stiffness;
  }
  return rise;
}

describe('pipeBuoyancy', () => {
  it('does not float where contents, wall and surroundings are of one density, and more the denser the surroundings', () => {
    fc.assert(
      fc.property(fc.double({ min: 800, max: 1500, noNaN: true }), fc.double({ min: 1, max: 500, noNaN: true }), (each, more) => {
        const like = { pipe, contents: density(each), wallDensity: density(each) };
        const { uplift } = pipeBuoyancy({ ...like, surroundings: density(each) });
        expect(uplift).toBeCloseTo(0, 9);
        expect(pipeBuoyancy({ ...like, surroundings: density(each + more) }).uplift).toBeGreaterThan(uplift);
        expect(pipeBuoyancy({ ...like, surroundings: density(each), contents: density(each + more) }).uplift).toBeLessThan(uplift);
      }),
    );
  });

  it('puts a weight so far from the next that the pipe rises by just what it may', () => {
    const { uplift, stiffLength = NaN } = pipeBuoyancy(empty);
    const stiffness = 4e8 * (Math.PI / 64) * (pipe.outsideDiameter ** 4 - pipe.insideDiameter ** 4);
    expect(riseByIntegration(uplift, stiffLength, stiffness)).toBeCloseTo(0.05, 6);
  });

  it('puts it no farther than it holds, with a third to spare', () => {
    const { uplift, heldLength = NaN, stiffLength = NaN, ballastSpacing } = pipeBuoyancy(empty);
    expect(uplift * heldLength * 1.5).toBeCloseTo(10 * 9.80665 * (1 - 1000 / 1600), 9);
    expect(ballastSpacing).toBe(Math.min(heldLength, stiffLength));
    const sinking = pipeBuoyancy({ ...empty, contents: density(1200) });
    expect([sinking.ballastSpacing, sinking.uplift < 0]).toEqual([undefined, true]);
    expect(sinking.findings.map(({ code }) => code)).toEqual(['pipe-floats']);
  });

  it('refuses a weight that floats, and bad input by name', () => {
    const afloat = { ...ballast, weightDensity: density(900) };
    expect(() => pipeBuoyancy({ ...empty, ballast: afloat })).toThrow(expect.objectContaining({ argument: 'ballast.weightDensity' }));
    const full: WetPipe = { ...empty, wallDensity: density(950) };
    refuses(pipeBuoyancy, inputShape, full);
  });
});
