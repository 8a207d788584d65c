import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  exponentialFiniteTrench,
  finiteTrenchInputShape,
  finiteTrenchResponse,
  type FiniteTrenchInput,
  groundResponse,
  type GroundSurface,
} from '../../src/ground/index.js';
import { lineEnds, lineInTheEnd } from '../../src/ground/line-ends.js';
import { exponentialIntegral } from '../../src/numerics/index.js';
import { days, diameterMetres, seconds, trenchMetres, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { layoutOf, soilOf } from './support.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const surfaces: readonly GroundSurface[] = [
  { type: 'isothermal' },
  { type: 'film', coefficient: wattsPerSquareMetreKelvin(10) },
  { type: 'adiabatic' },
];
const inputOf = (trenches: number, length: number, more: Partial<FiniteTrenchInput> = {}): FiniteTrenchInput => ({
  layout: layoutOf(
    [
      [0, 1.2],
      [0.3, 1.8],
    ],
    trenches,
    3,
  ),
  pipe: { outsideDiameter: diameterMetres(0.032) },
  soil: soilOf(1.5, 6e-7),
  trenchLength: trenchMetres(length),
  ...more,
});
const TIMES = [0, 60, 86400, 31557600, 10 * 31557600].map((time) => seconds(time));

describe('trenches with ends', () => {
  it('refuse every impossible field by its name', () => {
    const example = inputOf(2, 30, { surface: { type: 'film', coefficient: wattsPerSquareMetreKelvin(10) }, selfTerm: 'line' });
    const numbersOf = (input: FiniteTrenchInput): unknown => {
      const response = finiteTrenchResponse(input);
      return [response, response.riseAfter(days(30)), response.pipeRisesAfter(days(30))];
    };
    const more = (['isothermal', 'adiabatic'] as const).map((type) => ({ ...example, surface: { type } }));
    refuses(numbersOf, finiteTrenchInputShape, example, { more });
    expect(() => exponentialFiniteTrench(example)).toThrow(/selfTerm/u);
  });

  it('rise less than endless ones, the less the shorter, more with time, and below the surfaces in their order', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), between(5, 200), (trenches, length) => {
        const [isothermal, film, sealed] = surfaces.map((surface) => {
          const [short, long] = [inputOf(trenches, length, { surface }), inputOf(trenches, 1.5 * length, { surface })].map(finiteTrenchResponse);
          const { trenchLength: _, ...endless } = inputOf(trenches, length, { surface });
          return TIMES.map((time) => {
            const rise = short?.riseAfter(time) ?? Number.NaN;
            expect(rise).toBeLessThanOrEqual((long?.riseAfter(time) ?? Number.NaN) * (1 + 1e-12));
            expect(long?.riseAfter(time)).toBeLessThanOrEqual(groundResponse(endless).riseAfter(time) * (1 + 1e-12));
            return rise;
          });
        });
        for (const [index, rise] of (isothermal ?? []).entries()) {
          expect(rise).toBeGreaterThanOrEqual(isothermal?.[index - 1] ?? 0);
          expect(film?.[index]).toBeGreaterThanOrEqual(rise * (1 - 1e-12));
          expect(sealed?.[index]).toBeGreaterThanOrEqual((film?.[index] ?? Number.NaN) * (1 - 1e-12));
        }
      }),
      { numRuns: 40 },
    );
  });

  it('come to rest at the closed form, which lies past the longest time', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6 }), between(5, 300), (trenches, length) => {
        const response = finiteTrenchResponse(inputOf(trenches, length));
        expect(response.riseAfter(seconds(1e12)) / (response.steadyRise ?? Number.NaN)).toBeCloseTo(1, 5);
        expect(response.riseAfter(seconds(1e12))).toBeLessThanOrEqual((response.steadyRise ?? 0) * (1 + 1e-9));
      }),
    );
  });

  it('take off what the double integral over point sources takes off', () => {
    // ∫∫ erfc(d/2√s)/d over both lines against E1, by even points for a line 1 m off.
    const [length, square, spread] = [8, 1, 4];
    const points = 20_000;
    let sum = 0;
    for (let i = 0; i < points; i += 1) {
      const along = (length * (i + 0.5)) / points;
      const distance = Math.hypot(along, Math.sqrt(square));
      let [erf, term] = [0, distance / (2 * Math.sqrt(spread))];
      const x = term;
      for (let n = 1; Math.abs(term) > 1e-18; n += 1) {
        erf += term;
        term *= (2 * x * x) / (2 * n + 1);
      }
      sum += (2 * (1 - along / length) * (1 - (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * erf) * (length / points)) / distance;
    }
    expect(exponentialIntegral(square / (4 * spread)) - lineEnds(square, spread, length)).toBeCloseTo(sum, 7);
    expect(exponentialIntegral(square / 4e14) - lineEnds(square, 1e14, length)).toBeCloseTo(lineInTheEnd(square, length), 6);
  });

  it('are unchanged when lengths are scaled by c and times by c², and go with 1/conductivity', () => {
    fc.assert(
      fc.property(between(0.6, 2.4), (c) => {
        const scaled = finiteTrenchResponse(
          inputOf(3, 40 * c, {
            layout: layoutOf(
              [
                [0, 1.2 * c],
                [0.3 * c, 1.8 * c],
              ],
              3,
              3 * c,
            ),
            pipe: { outsideDiameter: diameterMetres(0.032 * c) },
            soil: soilOf(1.5 * c, 6e-7 * c * c),
          }),
        );
        const plain = finiteTrenchResponse(inputOf(3, 40));
        for (const time of TIMES.slice(1)) expect((scaled.riseAfter(time) * c) / plain.riseAfter(time)).toBeCloseTo(1, 9);
      }),
      { numRuns: 20 },
    );
  });

  it('follow by exponentials within what the fit says', () => {
    for (const surface of surfaces)
      for (const trenches of [1, 5]) {
        const input = inputOf(trenches, 35, { surface });
        const [response, exact] = [exponentialFiniteTrench(input), finiteTrenchResponse(input)];
        const { from, to, largestError } = response.fit;
        expect(largestError).toBeLessThan(2e-4);
        for (let i = 0; i <= 60; i += 1) {
          const time = seconds(Math.min(to, from * (to / from) ** (i / 60)));
          expect(Math.abs(response.riseAfter(time) / exact.riseAfter(time) - 1)).toBeLessThan(largestError * 1.05);
        }
        expect(response.steadyRise).toBe(exact.steadyRise);
      }
  });
});
