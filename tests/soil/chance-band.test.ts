import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limitsOf } from '../../src/soil/chance-band.js';
import { TEXTURE_CLASSES, textureClass, type TextureClass } from '../../src/soil/index.js';
import { normalShare } from '../../src/soil/normal-share.js';
import { TEXTURE_MIDDLES } from '../../src/soil/texture-middles.data.js';
import { sidesOfChances } from '../../src/soil/two-sided.js';
import { massFraction } from '../../src/units/index.js';

describe('the share of a normal distribution', () => {
  it.each([
    [0, 0.5],
    [1, 0.841344746],
    [1.2815515655446004, 0.9],
    [-1.959963985, 0.025],
    [-3, 0.001349898],
  ])('below %f deviations is %f, as tables have it', (deviations, share) => {
    expect(normalShare(deviations)).toBeCloseTo(share, 6);
  });
});

describe('limits of what may be one of several', () => {
  it('are those of draws', () => {
    const chances = [
      { shift: 0, share: 0.4 },
      { shift: 0.3, share: 0.35 },
      { shift: -0.2, share: 0.25 },
    ];
    const sides = { downward: 0.15, upward: 0.1 };
    let state = 20_261_125;
    const uniform = (): number => {
      state = (state * 48_271) % 2_147_483_647;
      return state / 2_147_483_647;
    };
    const normal = (): number => Array.from({ length: 12 }, uniform).reduce((sum, each) => sum + each, -6);
    const draws = Array.from({ length: 100_000 }, () => {
      const pick = uniform();
      const shift = pick < 0.4 ? 0 : pick < 0.75 ? 0.3 : -0.2;
      const error = normal();
      return shift + error * (error < 0 ? sides.downward : sides.upward);
    }).sort((a, b) => a - b);
    const [low, middle, high] = limitsOf(chances, sides);
    expect(low).toBeCloseTo(draws[10_000] ?? NaN, 2);
    expect(middle).toBeCloseTo(draws[50_000] ?? NaN, 2);
    expect(high).toBeCloseTo(draws[90_000] ?? NaN, 2);
  });

  it('are in order, and come from one chance as from several that agree', () => {
    fc.assert(
      fc.property(fc.double({ min: -1, max: 1, noNaN: true }), fc.double({ min: 0.01, max: 1, noNaN: true }), (shift, sigma) => {
        const sides = { downward: sigma, upward: 2 * sigma };
        const [low, middle, high] = limitsOf([{ shift, share: 1 }], sides);
        const twice = limitsOf(
          [
            { shift, share: 0.5 },
            { shift, share: 0.5 },
          ],
          sides,
        );
        expect(low).toBeLessThan(middle);
        expect(middle).toBeLessThan(high);
        [low, middle, high].forEach((limit, index) => {
          expect(Math.abs((twice[index] ?? NaN) - limit)).toBeLessThan(1e-5);
        });
      }),
    );
  });

  it('keep the variance of chances in their two sides', () => {
    const { downward, upward } = sidesOfChances([
      { shift: -0.2, share: 0.5 },
      { shift: 0.2, share: 0.5 },
    ]);
    expect([downward, upward]).toEqual([0.2, 0.2]);
  });
});

describe('compositions that stand for the classes', () => {
  it('are the middles of their areas to 0.5 points, loam but for its sand, and lie in their class', () => {
    const sums = new Map<TextureClass, readonly [count: number, sand: number, clay: number]>();
    const steps = 100;
    for (let sand = 0; sand <= steps; sand++) {
      for (let clay = 0; sand + clay <= steps; clay++) {
        const [s, c] = [sand / steps, clay / steps];
        const { texture } = textureClass({ sand: massFraction(s), silt: massFraction(Math.max(0, 1 - s - c)), clay: massFraction(c) });
        const [count, sandSum, claySum] = sums.get(texture) ?? [0, 0, 0];
        sums.set(texture, [count + 1, sandSum + s, claySum + c]);
      }
    }
    for (const texture of TEXTURE_CLASSES) {
      const { sand, clay } = TEXTURE_MIDDLES[texture];
      const [count, sandSum, claySum] = sums.get(texture) ?? [NaN, NaN, NaN];
      if (texture !== 'loam') expect(Math.abs(sandSum / count - sand)).toBeLessThan(0.005);
      expect(Math.abs(claySum / count - clay)).toBeLessThan(0.005);
      expect(textureClass({ sand: massFraction(sand), silt: massFraction(1 - sand - clay), clay: massFraction(clay) }).texture).toBe(texture);
    }
  });
});
