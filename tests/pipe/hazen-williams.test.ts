import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hazenWilliamsComparison, type HazenWilliamsFlow } from '../../src/pipe/index.js';
import { describeFinding } from '../../src/report/index.js';
import {
  diameterInches,
  gallonsPerMinute,
  kilogramsPerCubicMetre,
  litresPerSecond,
  metres,
  millipascalSeconds,
  ratio,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const of = (viscosity: number, gallons: number, coefficient = 150): HazenWilliamsFlow => ({
  pipe: { insideDiameter: diameterInches(0.86) },
  fluid: { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(viscosity) },
  flow: gallonsPerMinute(gallons),
  hazenWilliamsC: ratio(coefficient),
});
const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('hazenWilliamsComparison', () => {
  it('knows no viscosity, falls with C, and meets friction with the C that it tells', () => {
    fc.assert(
      fc.property(number(0.5, 20), number(0.5, 20), number(1, 20), number(50, 200), number(50, 200), (thin, thick, gallons, one, other) => {
        const first = hazenWilliamsComparison(of(thin, gallons, one));
        expect(hazenWilliamsComparison(of(thick, gallons, one)).hazenWilliams).toBe(first.hazenWilliams);
        const second = hazenWilliamsComparison(of(thin, gallons, other));
        expect((first.hazenWilliams - second.hazenWilliams) * (one - other)).toBeLessThanOrEqual(0);
        fc.pre(first.effectiveC >= 50 && first.effectiveC <= 200);
        expect(hazenWilliamsComparison(of(thin, gallons, first.effectiveC)).lossRatio).toBeCloseTo(1, 10);
      }),
    );
  });

  it('warns of cold antifreeze, not of warm water in a wide pipe', () => {
    const cold = hazenWilliamsComparison(of(3.9, 3));
    expect(cold.findings.map(({ code, level }) => `${code} ${level}`)).toEqual(['hazen-williams-off warning']);
    const [finding] = cold.findings;
    if (finding === undefined) throw new Error('a finding');
    expect(describeFinding(finding, 'us')).toContain('with the viscosity of this fluid the pipe loses');
    const warm = { ...of(1.0016, 40), pipe: { insideDiameter: diameterInches(2.067) } };
    expect(hazenWilliamsComparison(warm).findings).toEqual([]);
  });

  it('refuses bad input', () => {
    const shape: Shape<HazenWilliamsFlow> = {
      pipe: { insideDiameter: 'diameter' },
      fluid: { density: 'density', viscosity: 'dynamic viscosity' },
      flow: 'flow',
      roughness: { optional: 'length' },
      hazenWilliamsC: { optional: 'ratio' },
    };
    refuses<HazenWilliamsFlow>(hazenWilliamsComparison, shape, { ...of(3.9, 3), roughness: metres(1.5e-6) });
    expect(() => hazenWilliamsComparison({ ...of(3.9, 3), flow: litresPerSecond(0) })).toThrow('at standstill');
  });
});
