import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  churchillFrictionFactor,
  colebrookFrictionFactor,
  frictionFactor,
  haalandFrictionFactor,
  laminarFrictionFactor,
  swameeJainFrictionFactor,
  type FrictionChoice,
  type FrictionState,
} from '../../src/pipe/index.js';
import { ratio, type Shape } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const state = (reynolds: number, roughness: number): FrictionState => ({ reynolds: ratio(reynolds), relativeRoughness: ratio(roughness) });
const chosen = (reynolds: number, roughness = 0): FrictionChoice => frictionFactor(state(reynolds, roughness));
const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const turbulent = number(Math.log10(2300), 8).map((exponent) => 10 ** exponent);
const roughness = number(0, 0.05);
const shape: Shape<FrictionState> = { reynolds: 'ratio', relativeRoughness: 'ratio' };
const correlations = { colebrookFrictionFactor, haalandFrictionFactor, swameeJainFrictionFactor };

/** The root w of w + ln w = z, Wright's omega function, by bisection: Lambert's W of e^z without its overflow. */
function omega(z: number): number {
  let [low, high] = [0, Math.max(1, z)];
  for (let step = 0; step < 200; step += 1) {
    const middle = (low + high) / 2;
    if (middle + Math.log(middle) < z) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

describe('colebrookFrictionFactor', () => {
  it('is the closed form with Lambert’s function', () => {
    fc.assert(
      fc.property(turbulent, number(0, 1e-3), (reynolds, rough) => {
        const [a, b] = [rough / 3.7, 2.51 / reynolds];
        const scale = Math.LN10 / (2 * b);
        // x = −2 log₁₀(a + b x), with w = ln(10)/(2 b) · (a + b x): w + ln w = ln(10)/(2b) · a + ln(ln(10)/(2b)).
        const root = (omega(scale * a + Math.log(scale)) / scale - a) / b;
        expect(Math.abs(Math.sqrt(colebrookFrictionFactor(state(reynolds, rough))) * root - 1)).toBeLessThan(1e-10 * (1 + rough / b));
      }),
    );
  });

  it('meets its equation to the last digits', () => {
    fc.assert(
      fc.property(turbulent, roughness, (reynolds, rough) => {
        const root = colebrookFrictionFactor(state(reynolds, rough)) ** -0.5;
        expect(Math.abs(root + 2 * Math.log10(rough / 3.7 + (2.51 * root) / reynolds))).toBeLessThan(1e-13 * root);
      }),
    );
  });
});

describe.each(Object.entries(correlations))('%s', (name, correlation) => {
  it('falls with the Reynolds number, rises with roughness, is continuous', () => {
    fc.assert(
      fc.property(turbulent, turbulent, roughness, roughness, (one, other, smooth, rough) => {
        const [slow, fast, low, high] = [Math.min(one, other), Math.max(one, other), Math.min(smooth, rough), Math.max(smooth, rough)];
        expect(correlation(state(fast, low))).toBeLessThanOrEqual(correlation(state(slow, low)) * (1 + 1e-12));
        expect(correlation(state(slow, high))).toBeGreaterThanOrEqual(correlation(state(slow, low)) * (1 - 1e-12));
        const near = Math.min(slow * (1 + 1e-9), 1e8);
        expect(Math.abs(correlation(state(near, low)) / correlation(state(slow, low)) - 1)).toBeLessThan(1e-8);
      }),
    );
  });

  it('lies as near to Colebrook as it says', () => {
    const within = { colebrookFrictionFactor: 1e-15, haalandFrictionFactor: 0.0143, swameeJainFrictionFactor: 0.0336 }[name] ?? NaN;
    const inPlastic = { colebrookFrictionFactor: 1e-15, haalandFrictionFactor: 0.0138, swameeJainFrictionFactor: 0.0166 }[name] ?? NaN;
    fc.assert(
      fc.property(number(Math.log10(4000), 8), roughness, number(0, 1e-4), (exponent, rough, smooth) => {
        const off = (of: FrictionState): number => Math.abs(correlation(of) / colebrookFrictionFactor(of) - 1);
        expect(off(state(10 ** exponent, rough))).toBeLessThanOrEqual(within);
        expect(off(state(Math.min(10 ** exponent, 1e6), smooth))).toBeLessThanOrEqual(inPlastic);
      }),
    );
  });

  it('refuses bad input and laminar flow', () => {
    refuses(correlation, shape, state(5000, 1e-4));
    expect(() => correlation(state(2000, 0))).toThrow('laminar flow has 64/Re');
    expect(() => correlation(state(5000, 0.06))).toThrow('relativeRoughness');
  });
});

describe('laminarFrictionFactor', () => {
  it('is Churchill’s as long as that is laminar', () => {
    for (const reynolds of [1, 100, 1500]) {
      expect(laminarFrictionFactor({ reynolds: ratio(reynolds) }) / churchillFrictionFactor(state(reynolds, 0))).toBeCloseTo(1, 6);
    }
  });

  it('refuses bad input and turbulent flow', () => {
    refuses(laminarFrictionFactor, { reynolds: 'ratio' }, { reynolds: ratio(1000) });
    expect(() => laminarFrictionFactor({ reynolds: ratio(2301) })).toThrow('laminar no longer');
  });
});

describe('frictionFactor', () => {
  it('holds its factor, and all that apply, between its limits', () => {
    fc.assert(
      fc.property(number(0, 8), roughness, (exponent, rough) => {
        const { frictionFactor: factor, leastFriction, greatestFriction, applicable, regime } = chosen(10 ** exponent, rough);
        for (const each of [factor, ...applicable.map((one) => one.frictionFactor)]) {
          expect(each).toBeGreaterThanOrEqual(leastFriction);
          expect(each).toBeLessThanOrEqual(greatestFriction);
        }
        expect(applicable.length).toBe({ laminar: 2, transitional: 1, turbulent: 4 }[regime]);
        expect(factor).toBe(churchillFrictionFactor(state(10 ** exponent, rough)));
      }),
    );
  });

  it('leaves 1.8 % open in turbulent flow through plastic pipe, a factor of 1.6 and more in transition', () => {
    fc.assert(
      fc.property(number(Math.log10(4000), 6), number(0, 1e-4), number(2301, 3999), (exponent, rough, between) => {
        const { leastFriction, greatestFriction } = chosen(10 ** exponent, rough);
        expect(greatestFriction / leastFriction).toBeLessThan(1.018);
        const open = chosen(between, rough);
        expect(open.greatestFriction / open.leastFriction).toBeGreaterThan(1.6);
      }),
    );
  });

  it('names what applies', () => {
    expect(chosen(1000).applicable.map(({ correlation }) => correlation)).toEqual(['laminar', 'Churchill']);
    expect(chosen(3000).applicable.map(({ correlation }) => correlation)).toEqual(['Churchill']);
    expect(chosen(9000).applicable.map(({ correlation }) => correlation)).toEqual(['Colebrook', 'Haaland', 'Swamee-Jain', 'Churchill']);
  });

  it('refuses bad input', () => {
    refuses(frictionFactor, shape, state(5000, 1e-4));
    refuses(frictionFactor, shape, state(3000, 1e-4));
    refuses(frictionFactor, shape, state(1000, 1e-4));
  });
});
