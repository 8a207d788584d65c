import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airConductivity, iceConductivity, mixedSolids, solidsConductivity, waterConductivity, type SoilSolids } from '../../src/soil/index.js';
import { celsius, fraction, massFraction, volumeFraction, type Conductivity, type Shape, type Temperature } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('waterConductivity, iceConductivity, airConductivity', () => {
  /** The polynomial of soil practice, which no model here takes (Campbell and others 1994). */
  const practice = (t: number): number => 0.554 + 2.24e-3 * t - 9.87e-6 * t ** 2;

  it('has water within 1 % of the polynomial of soil practice', () => {
    fc.assert(
      fc.property(between(0, 60), (t) => {
        expect(Math.abs(waterConductivity(celsius(t)) / practice(t) - 1)).toBeLessThan(0.01);
      }),
    );
  });

  it.each([
    ['water', waterConductivity, 0, 96.85, 1],
    ['ice', iceConductivity, -60, 0, -1],
    ['air', airConductivity, -40, 100, 1],
  ] as const)('has %s go one way with temperature', (_, of, coldest, warmest, sign) => {
    fc.assert(
      fc.property(between(coldest, warmest - 1), between(0.01, 1), (t, warmer) => {
        expect(sign * (of(celsius(t + warmer)) - of(celsius(t)))).toBeGreaterThan(0);
      }),
    );
  });

  it('refuse bad input', () => {
    const at = (of: (temperature: Temperature) => Conductivity, example: number): void => {
      refuses<{ readonly temperature: Temperature }>(
        ({ temperature }) => of(temperature),
        { temperature: 'temperature' },
        { temperature: celsius(example) },
      );
    };
    at(waterConductivity, 10);
    at(iceConductivity, -5);
    at(airConductivity, 10);
    expect(() => waterConductivity(celsius(-1))).toThrow('temperature');
    expect(() => iceConductivity(celsius(1))).toThrow('temperature');
  });
});

describe('solidsConductivity', () => {
  it('falls with organic matter and rises with quartz on either side of its step', () => {
    const of = (quartz: number, organic: number): number =>
      solidsConductivity({ quartzFraction: fraction(quartz), organicShare: volumeFraction(organic) });
    fc.assert(
      fc.property(between(0, 1), between(0, 0.9), between(0.01, 0.1), (quartz, organic, more) => {
        expect(of(quartz, organic + more)).toBeLessThan(of(quartz, organic));
      }),
    );
    expect([of(0, 0), of(0.1, 0), of(0.2, 0)].map((k) => Number(k.toFixed(3)))).toEqual([3, 3.297, 3.622]);
    expect([of(0.21, 0), of(0.6, 0), of(1, 0)].map((k) => Number(k.toFixed(3)))).toEqual([2.654, 4.491, 7.7]);
    expect(of(0.5, 1)).toBe(0.25);
  });

  it('refuses bad input', () => {
    const shape: Shape<SoilSolids> = { quartzFraction: 'fraction', organicShare: { optional: 'volume fraction' } };
    refuses<SoilSolids>(solidsConductivity, shape, { quartzFraction: fraction(0.3), organicShare: volumeFraction(0.1) });
  });
});

describe('mixedSolids', () => {
  it('goes from minerals to organic matter, which takes more of the volume than of the mass', () => {
    fc.assert(
      fc.property(between(0, 1), (share) => {
        const { organicShare, particleDensity } = mixedSolids(massFraction(share));
        expect(organicShare).toBeGreaterThanOrEqual(share * (1 - 1e-12));
        // The mass of each part is its volume times its density.
        expect((organicShare * 1300) / particleDensity).toBeCloseTo(share, 12);
        expect(organicShare * 1300 + (1 - organicShare) * 2650).toBeCloseTo(particleDensity, 8);
      }),
    );
  });

  it('refuses bad input', () => {
    refuses<{ readonly organicMatter: ReturnType<typeof massFraction> }>(
      ({ organicMatter }) => mixedSolids(organicMatter),
      { organicMatter: 'mass fraction' },
      { organicMatter: massFraction(0.2) },
    );
  });
});
