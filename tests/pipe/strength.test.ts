import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minimumBendRadius, pipeBendShape, pipePressureRating, ratedPipeShape, type PipeBend, type RatedPipe } from '../../src/pipe/index.js';
import { describeFinding } from '../../src/report/index.js';
import { celsius, diameterInches, diameterMetres, fahrenheit, fraction, inches, metres } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const rated = (temperature: number): ReturnType<typeof pipePressureRating> =>
  pipePressureRating({ material: 'PE4710', dimensionRatio: '11', temperature: celsius(temperature) });
/** Warmest that is answered: 100 °F. */
const WARMEST = 37.7777;

describe('pipePressureRating', () => {
  it('never rises with temperature, and never above the cold rating', () => {
    fc.assert(
      fc.property(number(-50, WARMEST), number(-50, WARMEST), (one, other) => {
        const [cool, warm] = [rated(Math.min(one, other)), rated(Math.max(one, other))];
        expect(warm.rating).toBeLessThanOrEqual(cool.rating);
        expect(cool.rating).toBeLessThanOrEqual(cool.coldRating);
        expect(cool.rating).toBeCloseTo(cool.coldRating * cool.temperatureFactor, 6);
      }),
    );
  });

  it('takes the lowest of three lists', () => {
    expect([20, 25, 30].map((temperature) => rated(temperature).deratedBy)).toEqual([undefined, 'iso4427Temperature', 'iso4427Temperature']);
    const at = (degrees: number): ReturnType<typeof rated> => rated(fahrenheit(degrees));
    expect([at(81), at(92)].map(({ temperatureFactor, deratedBy }) => [temperatureFactor, deratedBy])).toEqual([
      [0.9, 'awwaM55'],
      [0.8, 'awwaM55'],
    ]);
    expect(at(100).temperatureFactor).toBeCloseTo(0.87 - 0.013 * (37.7777778 - 30), 6);
  });

  it('falls with the dimension ratio, and with the factor of the fluid', () => {
    const of = (rest: Partial<RatedPipe>): number =>
      pipePressureRating({ material: 'PE100', dimensionRatio: '11', temperature: celsius(10), ...rest }).rating;
    const all = (['9', '11', '13.5', '13.6', '15.5', '17'] as const).map((dimensionRatio) => of({ dimensionRatio }));
    expect([...all].sort((a, b) => b - a)).toEqual(all);
    expect(of({ environmentFactor: fraction(0.5) })).toBeCloseTo(of({}) / 2, 6);
  });

  it('says what warmth takes', () => {
    expect(rated(15).findings).toEqual([]);
    const [finding] = rated(30).findings;
    if (finding === undefined) throw new Error('a finding');
    expect(describeFinding(finding, 'us')).toContain('let the pipe cool first');
  });

  it('refuses bad input, and a pipe hot from the sun', () => {
    refuses(pipePressureRating, ratedPipeShape, {
      material: 'PE4710',
      dimensionRatio: '11',
      temperature: celsius(20),
      environmentFactor: fraction(1),
    });
    expect(() => rated(45)).toThrow('let a sun-warmed pipe cool');
  });
});

describe('minimumBendRadius', () => {
  const bend = { outsideDiameter: diameterInches(1.05), dimensionRatio: '11' } as const;

  it('is proportional to the diameter, never tighter for thinner pipe', () => {
    const ratios = (['9', '11', '13.5', '13.6', '15.5', '17'] as const).map(
      (dimensionRatio) => minimumBendRadius({ ...bend, dimensionRatio }).bendRatio,
    );
    expect(ratios).toEqual([20, 25, 25, 25, 27, 27]);
    fc.assert(
      fc.property(number(0.01, 0.2), (outside) => {
        const { leastBendRadius, bendRatio } = minimumBendRadius({ ...bend, outsideDiameter: diameterMetres(outside) });
        expect(leastBendRadius).toBe(bendRatio * outside);
      }),
    );
  });

  it('warns of rings of 36 in, and of any at a fitting', () => {
    const [finding, ...more] = minimumBendRadius({ ...bend, bendRadius: inches(18) }).findings;
    expect(more).toEqual([]);
    if (finding === undefined) throw new Error('a finding');
    expect([finding.code, finding.level]).toEqual(['bend-tight', 'warning']);
    expect(describeFinding(finding, 'us')).toContain('the set of its coil');
    expect(minimumBendRadius({ ...bend, bendRadius: inches(27) }).findings).toEqual([]);
    expect(minimumBendRadius({ ...bend, bendRadius: inches(27), fittingInBend: true }).findings).toHaveLength(1);
    expect(minimumBendRadius(bend).findings).toEqual([]);
  });

  it('refuses bad input', () => {
    refuses<PipeBend>(minimumBendRadius, pipeBendShape, { ...bend, fittingInBend: false, bendRadius: metres(1) });
    expect(() => minimumBendRadius({ ...bend, bendRadius: metres(0.01) })).toThrow('bendRadius');
  });
});
