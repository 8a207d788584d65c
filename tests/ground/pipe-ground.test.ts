import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { periodicResponse, pipeGround, type PipeGroundInput, pipeGroundInputShape } from '../../src/ground/index.js';
import { celsius, dayOfYear, days, diameterMetres, diameterMillimetres, kelvinDifference, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { between, fieldCases, type FieldCase, layoutOfCase } from './field-cases.js';
import { layoutOf, soilOf } from './support.js';

const wave = { of: 'ground surface', mean: celsius(9), amplitude: kelvinDifference(11), coldestDay: dayOfYear(30), period: days(365) } as const;
const secondHarmonic = { amplitude: kelvinDifference(2), coldestDay: dayOfYear(100) };
const inputOf = (field: FieldCase): PipeGroundInput => ({
  layout: layoutOfCase(field),
  pipe: { outsideDiameter: diameterMetres(2 * field.radius) },
  soil: soilOf(field.conductivity, field.diffusivity),
  wave,
  secondHarmonic,
});
const pair = (trenches: number): PipeGroundInput => ({
  layout: layoutOf(
    [
      [0, 1.2],
      [0, 1.8],
    ],
    trenches,
    3,
  ),
  pipe: { outsideDiameter: diameterMillimetres(33.4) },
  soil: soilOf(1.5, 6e-7),
  wave,
});

describe('ground at pipes', () => {
  const days8 = Array.from({ length: 8 }, (_, index) => dayOfYear(1 + 45 * index));

  it('is a sine that fades and comes later with depth, and at equal heat its mean over the pipes', () => {
    fc.assert(
      fc.property(fieldCases, between(1, 366), (field, day) => {
        const { loop, pipes } = pipeGround(inputOf(field));
        const at = ([, depth]: FieldCase['pipes'][number]): number => {
          const sine = (amplitude: number, coldest: number, n: number): number => {
            const deep = depth * Math.sqrt((n * Math.PI) / (wave.period * field.diffusivity));
            return amplitude * Math.exp(-deep) * Math.cos((2 * Math.PI * n * (day - coldest)) / 365 - deep);
          };
          return wave.mean - sine(wave.amplitude, wave.coldestDay, 1) - sine(secondHarmonic.amplitude, secondHarmonic.coldestDay, 2);
        };
        const each = field.pipes.map(at);
        for (const [index, pipe] of pipes.entries()) expect(pipe.temperatureOn(dayOfYear(day))).toBeCloseTo(each[index] ?? Number.NaN, 9);
        expect(loop.temperatureOn(dayOfYear(day))).toBeCloseTo(each.reduce((sum, value) => sum + value, 0) / each.length, 9);
      }),
    );
  });

  it('is coldest on the coldest day by its amplitude', () => {
    fc.assert(
      fc.property(fieldCases, (field) => {
        const { secondHarmonic: _, ...input } = inputOf(field);
        for (const { mean, amplitude, coldestDay, temperatureOn } of [pipeGround(input).loop, ...pipeGround(input).pipes])
          expect(temperatureOn(coldestDay)).toBeCloseTo(mean - amplitude, 9);
      }),
    );
  });

  it('at equal wall temperature has weights that add up to 1, and is the own one of pipes at one depth', () => {
    fc.assert(
      fc.property(fieldCases, between(0.6, 3), (field, depth) => {
        const tied = pipeGround({ ...inputOf(field), wallCondition: 'equal temperature' });
        const parts = tied.weights
          .flat()
          .map(({ overMean, lag }) => [
            overMean * Math.cos((2 * Math.PI * lag) / wave.period),
            overMean * Math.sin((2 * Math.PI * lag) / wave.period),
          ]);
        expect(parts.reduce((sum, [re]) => sum + (re ?? Number.NaN), 0) / parts.length).toBeCloseTo(1, 9);
        expect(parts.reduce((sum, [, im]) => sum + (im ?? Number.NaN), 0) / parts.length).toBeCloseTo(0, 9);
        const flat: FieldCase = {
          ...field,
          pipes: [
            [0, depth],
            [0.5, depth],
          ],
        };
        const { loop, pipes } = pipeGround({ ...inputOf(flat), wallCondition: 'equal temperature' });
        for (const day of days8) expect(loop.temperatureOn(day)).toBeCloseTo(pipes[0]?.temperatureOn(day) ?? Number.NaN, 8);
      }),
      { numRuns: 25 },
    );
  });

  it('leaves no heat over where walls are tied: pipes that answer the difference to their own ground add up to nothing', () => {
    // Two pipes by hand: heats ±q with own = (A11 − A12) q + … solved from periodic responses of one and of both.
    const { weights } = pipeGround({ ...pair(1), wallCondition: 'equal temperature' });
    const [upper, lower] = weights[0] ?? [];
    const swing = (depths: readonly number[]): { re: number; im: number } => {
      const { layout: _, wave: __, ...rest } = pair(1);
      const { amplitude, lag } = periodicResponse({ ...rest, layout: layoutOf(depths.map((depth) => [0, depth] as const)), period: wave.period });
      const angle = (2 * Math.PI * lag) / wave.period;
      return { re: amplitude * Math.cos(angle), im: -amplitude * Math.sin(angle) };
    };
    const [a, b, both] = [swing([1.2]), swing([1.8]), swing([1.2, 1.8])];
    const c = { re: both.re - (a.re + b.re) / 2, im: both.im - (a.im + b.im) / 2 };
    // The share of the upper one is (A22 − A12)/(A11 + A22 − 2 A12).
    const [top, bottom] = [
      { re: b.re - c.re, im: b.im - c.im },
      { re: a.re + b.re - 2 * c.re, im: a.im + b.im - 2 * c.im },
    ];
    const share = Math.hypot(top.re, top.im) / Math.hypot(bottom.re, bottom.im);
    expect(upper?.overMean).toBeCloseTo(2 * share, 9);
    expect(upper?.overMean ?? 0).toBeGreaterThan(lower?.overMean ?? Infinity);
  });

  it('refuses what cannot be', () => {
    const example: PipeGroundInput = {
      ...pair(2),
      surface: { type: 'film', coefficient: wattsPerSquareMetreKelvin(15) },
      selfTerm: 'line',
      secondHarmonic,
      wallCondition: 'equal flux',
    };
    const more: PipeGroundInput[] = [
      { ...example, surface: { type: 'isothermal' } },
      { ...example, surface: { type: 'adiabatic' }, wallCondition: 'equal temperature' },
    ];
    refuses((input) => pipeGround(input).loop.temperatureOn(dayOfYear(5)), pipeGroundInputShape, example, { more });
    expect(() => pipeGround({ ...example, wave: { ...wave, of: 'air' } })).toThrow(/wave\.of/u);
    expect(() => pipeGround({ ...pair(101), wallCondition: 'equal temperature' })).toThrow(/layout\.pipes/u);
  });
});
