import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PressureKick, trappedAir } from '../../src/circuit/index.js';
import { bars, cubicMetres, diameterMillimetres, fraction, litres, pascals, type Shape } from '../../src/units/index.js';
import { bandShape } from '../../src/states/index.js';
import { refuses } from '../support/bad-input.js';

const inputShape: Shape<PressureKick> = {
  pipe: { outsideDiameter: 'diameter', insideDiameter: 'diameter' },
  loopVolume: 'volume',
  waterIn: 'volume',
  waterInError: 'volume',
  pressureBefore: 'pressure',
  pressureAfter: 'pressure',
  airPressure: { optional: 'pressure' },
  modulus: { optional: bandShape('pressure') },
};
const pipe = { outsideDiameter: diameterMillimetres(26.67), insideDiameter: diameterMillimetres(21.844) };
const kick: PressureKick = {
  pipe,
  loopVolume: litres(230),
  waterIn: litres(4),
  waterInError: litres(0.2),
  pressureBefore: bars(1),
  pressureAfter: bars(4),
};

/** Radial growth of a thick ring per pressure, by shooting the equation of its stress from wall to wall in plane strain. */
function boreGrowth(young: number, poisson: number): number {
  const [a, b] = [pipe.insideDiameter / 2, pipe.outsideDiameter / 2];
  const [lambda, mu] = [(young * poisson) / ((1 + poisson) * (1 - 2 * poisson)), young / (2 * (1 + poisson))];
  const outwards = (start: number): { readonly inner: number; readonly outer: number } => {
    // u'' + u'/r − u/r² = 0 from u(a) = a, u'(a) = start, by Runge and Kutta.
    const steps = 2000;
    const h = (b - a) / steps;
    let [u, slope] = [a, start];
    const bend = (r: number, at: number, du: number): number => at / r ** 2 - du / r;
    for (let k = 0; k < steps; k += 1) {
      const r = a + k * h;
      const k1 = bend(r, u, slope);
      const k2 = bend(r + h / 2, u + (h / 2) * slope, slope + (h / 2) * k1);
      const k3 = bend(r + h / 2, u + (h / 2) * slope + (h * h * k1) / 4, slope + (h / 2) * k2);
      const k4 = bend(r + h, u + h * slope + (h * h * k2) / 2, slope + h * k3);
      u += h * slope + (h * h * (k1 + k2 + k3)) / 6;
      slope += (h * (k1 + 2 * k2 + 2 * k3 + k4)) / 6;
    }
    const stress = (r: number, at: number, du: number): number => (lambda + 2 * mu) * du + (lambda * at) / r;
    return { inner: stress(a, a, start), outer: stress(b, u, slope) };
  };
  // Linear in the start: the one without stress at the outer wall.
  const [zero, one] = [outwards(0), outwards(-1)];
  const share = zero.outer / (zero.outer - one.outer);
  return 2 / -(zero.inner + share * (one.inner - zero.inner));
}

describe('trappedAir', () => {
  it('gives back a volume of air from the kick made with it', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50, noNaN: true }), fc.double({ min: 0.5, max: 8, noNaN: true }), (air, rise) => {
        const pressureAfter = bars(1 + rise);
        const none = trappedAir({ ...kick, pressureAfter, waterIn: litres(0) });
        const squeezed = air * (1 - (1e5 + 101_325) / (pressureAfter + 101_325));
        const found = trappedAir({ ...kick, pressureAfter, waterIn: cubicMetres(none.swell.estimate + squeezed / 1000) });
        expect(found.airVolume.estimate * 1000).toBeCloseTo(air, 9);
        expect(found.airVolume.low).toBeLessThanOrEqual(found.airVolume.estimate);
        expect(found.airVolume.high).toBeGreaterThanOrEqual(found.airVolume.estimate);
      }),
    );
  });

  it('reckons the swell of the wall as the ring of the equation of stress does', () => {
    const known = { low: pascals(8e8), estimate: pascals(8e8), high: pascals(8e8), coverage: fraction(0.9) };
    const { swell } = trappedAir({ ...kick, modulus: known });
    expect(swell.estimate / (0.23 * 3e5) - 4.6e-10).toBeCloseTo(boreGrowth(8e8, 0.45), 13);
    expect(swell.low).toBe(swell.high);
  });

  it('widens its limits with the error of the reading, and sees no air in what the wall takes up', () => {
    const width = (error: number): number => {
      const { airVolume: air } = trappedAir({ ...kick, waterInError: litres(error) });
      return air.high - air.low;
    };
    expect(width(0.5)).toBeGreaterThan(width(0.1));
    const tight = trappedAir({ ...kick, waterIn: trappedAir(kick).swell.estimate });
    expect(tight.findings.map(({ code }) => code)).toEqual(['air-not-seen']);
    expect(tight.airVolume.estimate).toBeCloseTo(0, 12);
  });

  it('refuses a kick without a rise, and bad input by name', () => {
    expect(() => trappedAir({ ...kick, pressureAfter: bars(1) })).toThrow(expect.objectContaining({ argument: 'pressureAfter' }));
    expect(() => trappedAir({ ...kick, pressureAfter: bars(1.01) })).toThrow('1 %');
    const modulus = { low: pascals(6e8), estimate: pascals(8e8), high: pascals(1e9), coverage: fraction(0.9) };
    const full: PressureKick = { ...kick, airPressure: pascals(9e4), modulus };
    refuses(trappedAir, inputShape, full);
  });
});
