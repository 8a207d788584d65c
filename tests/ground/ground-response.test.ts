import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { GroundResponse, GroundSurface } from '../../src/ground/index.js';
import { seconds, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { lineSourceRise } from '../support/line-source.js';
import { layoutOf, responseOf } from './support.js';

type Place = readonly [x: number, depth: number];
const YEAR = 31557600;
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const logBetween = (min: number, max: number): fc.Arbitrary<number> => between(Math.log(min), Math.log(max)).map(Math.exp);

/** A trench of one to three pipes well apart, in soils of every kind, from a minute to a hundred years. */
const cases = fc.record({
  pipes: fc
    .tuple(between(0.6, 3), between(0.3, 1), between(0.3, 1), fc.integer({ min: 1, max: 3 }))
    .map(([top, across, down, count]): readonly Place[] =>
      (
        [
          [0, top],
          [across, top + down],
          [across / 3, top + 2 * down],
        ] as const
      ).slice(0, count),
    ),
  trenches: fc.integer({ min: 1, max: 6 }),
  spacing: between(1.5, 8),
  radius: between(0.01, 0.03),
  conductivity: between(0.3, 3),
  diffusivity: between(2e-7, 1.5e-6),
  selfTerm: fc.constantFrom('cylinder' as const, 'line' as const),
  time: logBetween(60, 100 * YEAR),
});
type Case = typeof cases extends fc.Arbitrary<infer C> ? C : never;

const respond = ({ pipes, trenches, spacing, ...rest }: Omit<Case, 'time'>, surface: GroundSurface = { type: 'isothermal' }): GroundResponse =>
  responseOf(layoutOf(pipes, trenches, spacing), { ...rest, surface });
const holds = (property: (input: Case) => void, numRuns = 100): void => {
  fc.assert(
    fc.property(cases, (input) => {
      property(input);
    }),
    { numRuns },
  );
};
const near = (a: number, b: number, relative: number): void => {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)));
};
const steadyOf = (response: GroundResponse): number => response.steadyRise ?? Number.NaN;

describe('ground response', () => {
  it('is the sum over all pairs of line sources and images, written apart', () => {
    holds((input) => {
      const everywhere = Array.from({ length: input.trenches }, (_, n) =>
        input.pipes.map(([x, depth]): Place => [x + n * input.spacing, depth]),
      ).flat();
      const apart = lineSourceRise(everywhere, input.radius, input.conductivity, input.diffusivity)(input.time);
      const rise = respond({ ...input, selfTerm: 'line' }).riseAfter(seconds(input.time));
      expect(Math.abs(rise - apart)).toBeLessThan(1e-9 * apart + 1e-15);
    });
  });

  it('is positive, grows with time and stays below its steady value', () => {
    holds((input) => {
      const response = respond(input);
      const rise = response.riseAfter(seconds(input.time));
      expect(rise).toBeGreaterThan(0);
      expect(response.riseAfter(seconds(input.time * 1.01))).toBeGreaterThanOrEqual(rise * (1 - 1e-13));
      expect(rise).toBeLessThan(steadyOf(response) * (1 + 1e-13));
      expect(response.riseAfter(seconds(0))).toBe(0);
    });
  });

  it('tends to its steady value', () => {
    holds((input) => {
      const response = respond(input);
      near(response.riseAfter(seconds(1e12)), steadyOf(response), 1e-3);
    });
  });

  it('is unchanged when lengths are scaled and times by the square, and goes with 1/conductivity', () => {
    fc.assert(
      fc.property(cases, between(0.5, 3), (input, c) => {
        const rise = respond(input).riseAfter(seconds(input.time));
        const pipes = input.pipes.map(([x, depth]): Place => [c * x, c * depth]);
        const scaled = respond({ ...input, pipes, spacing: c * input.spacing, radius: c * input.radius });
        near(scaled.riseAfter(seconds(c * c * input.time)), rise, 1e-9);
        near(respond({ ...input, conductivity: c * input.conductivity }).riseAfter(seconds(input.time)) * c, rise, 1e-12);
        near(respond({ ...input, diffusivity: input.diffusivity / c }).riseAfter(seconds(c * input.time)), rise, 1e-12);
      }),
    );
  });

  it('has as its mean the mean of the pipes, and per metre of trench what its pipes share', () => {
    holds((input) => {
      const response = respond(input);
      const each = response.pipeRisesAfter(seconds(input.time)).flat();
      expect(each.length).toBe(input.trenches * input.pipes.length);
      near(each.reduce((sum, rise) => sum + rise, 0) / each.length, response.riseAfter(seconds(input.time)), 1e-11);
      near(response.trenchRiseAfter(seconds(input.time)) * input.pipes.length, response.riseAfter(seconds(input.time)), 1e-15);
      const steady = response.steadyPipeRises?.flat() ?? [];
      near(steady.reduce((sum, rise) => sum + rise, 0) / steady.length, steadyOf(response), 1e-11);
      near((response.steadyTrenchRise ?? Number.NaN) * input.pipes.length, steadyOf(response), 1e-15);
    });
  });

  it('is the same for trenches counted from either end, and highest in the middle', () => {
    holds((input) => {
      const rises = respond({ ...input, pipes: [[0, 1.5]], trenches: 5 })
        .pipeRisesAfter(seconds(input.time))
        .flat();
      for (const [index, rise] of rises.entries()) near(rise, rises[4 - index] ?? Number.NaN, 1e-13);
      expect(rises[2] ?? 0).toBeGreaterThanOrEqual((rises[0] ?? Infinity) * (1 - 1e-13));
    });
  });

  it('works both ways alike: one pipe on another as that one on it', () => {
    holds(({ time, ...input }) => {
      const place = (x: number): Place => [x, 1];
      const lone = (depth: number): number => respond({ ...input, pipes: [[0, depth]], trenches: 1 }).riseAfter(seconds(time));
      const [upper = 0, lower = 0] = respond({ ...input, pipes: [place(0), [0.4, 2]], trenches: 1 })
        .pipeRisesAfter(seconds(time))
        .flat();
      expect(Math.abs(upper - lone(1) - (lower - lone(2)))).toBeLessThan(1e-13);
    });
  });

  it('rises when a pipe is added, by what pairs of pipes do to each other', () => {
    holds((input) => {
      const at = (pipes: readonly Place[]): readonly number[] =>
        respond({ ...input, pipes, trenches: 1 })
          .pipeRisesAfter(seconds(input.time))
          .flat();
      const [a, b, c]: readonly [Place, Place, Place] = [
        [0, 1],
        [0.5, 1.3],
        [-0.4, 1.9],
      ];
      const first = (pipes: readonly Place[]): number => at(pipes)[0] ?? Number.NaN;
      const alone = first([a]);
      expect(first([a, b, c]) - alone).toBeGreaterThanOrEqual(0);
      expect(first([a, b, c])).toBeCloseTo(first([a, b]) + first([a, c]) - alone, 13);
    });
  });

  it('comes to that of one trench as the trenches move apart', () => {
    holds(({ trenches, ...input }) => {
      const one = respond({ ...input, trenches: 1 }).riseAfter(seconds(input.time));
      const apart = [3, 10, 30, 1000].map((spacing) => respond({ ...input, trenches, spacing }).riseAfter(seconds(input.time)));
      for (const [index, rise] of apart.entries()) expect(rise).toBeLessThanOrEqual((apart[index - 1] ?? Infinity) * (1 + 1e-12));
      near(apart[3] ?? Number.NaN, one, 1e-4);
    });
  });

  it('warms most below a sealed surface, least below an isothermal one, with a film between', () => {
    holds((input) => {
      const after = (surface: GroundSurface): number => respond(input, surface).riseAfter(seconds(input.time));
      const film = (coefficient: number): GroundSurface => ({ type: 'film', coefficient: wattsPerSquareMetreKelvin(coefficient) });
      const rises = [after({ type: 'isothermal' }), after(film(1e9)), after(film(20)), after(film(3)), after({ type: 'adiabatic' })];
      for (const [index, rise] of rises.entries()) expect(rise).toBeGreaterThanOrEqual((rises[index - 1] ?? 0) * (1 - 1e-12));
      near(rises[0] ?? 0, rises[1] ?? 1, 1e-8);
    });
  });

  it('never ends below a sealed surface', () => {
    const sealed = respond(
      { pipes: [[0, 1.5]], trenches: 1, spacing: 3, radius: 0.0167, conductivity: 1.5, diffusivity: 6e-7, selfTerm: 'line' },
      { type: 'adiabatic' },
    );
    expect([sealed.steadyRise, sealed.steadyTrenchRise, sealed.steadyPipeRises]).toEqual([undefined, undefined, undefined]);
    const [early = 0, later = 0] = sealed.risesAfter([seconds(1e10), seconds(1e11)]);
    near(later - early, (2 * Math.log(10)) / (4 * Math.PI * 1.5), 1e-3);
  });

  it('gives at many times what it gives at each', () => {
    holds((input) => {
      const response = respond(input);
      const times = [60, 3600, input.time].map((time) => seconds(time));
      expect(response.risesAfter(times)).toEqual(times.map((time) => response.riseAfter(time)));
    });
  });
});
