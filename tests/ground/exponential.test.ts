import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  exponentialGeometry,
  type ExponentialGeometryInput,
  exponentialGeometryInputShape,
  exponentialPair,
  exponentialResponse,
  type ExponentialResponse,
  groundResponse,
  type GroundResponseInput,
  groundResponseInputShape,
  type GroundSurface,
} from '../../src/ground/index.js';
import {
  days,
  diameterMetres,
  type PipeResistance,
  seconds,
  squareMetresPerSecond,
  type Time,
  wattsPerSquareMetreKelvin,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { e1 } from '../support/line-source.js';
import { layoutOf, soilOf } from './support.js';

type Places = readonly (readonly [x: number, depth: number])[];
const MINUTE = 60;
const YEARS_20 = 20 * 31557600;
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const isothermal: GroundSurface = { type: 'isothermal' };
const film = (coefficient: number): GroundSurface => ({ type: 'film', coefficient: wattsPerSquareMetreKelvin(coefficient) });
const adiabatic: GroundSurface = { type: 'adiabatic' };

const SECTIONS: Readonly<Record<string, Places>> = {
  'one pipe': [[0, 1.5]],
  'two pipes, stacked': [
    [0, 1.2192],
    [0, 1.8288],
  ],
  'two pipes, side by side': [
    [-0.3, 1.5],
    [0.3, 1.5],
  ],
  'four pipes': [
    [-0.3, 1.2],
    [0.3, 1.2],
    [-0.3, 1.8],
    [0.3, 1.8],
  ],
};

const inputOf = (places: Places, trenches: number, more: Partial<GroundResponseInput> = {}): GroundResponseInput => ({
  layout: layoutOf(places, trenches, 3.048),
  pipe: { outsideDiameter: diameterMetres(0.0334) },
  soil: soilOf(1.5, 6e-7),
  ...more,
});
const stacked = inputOf(SECTIONS['two pipes, stacked'] ?? [], 4);
const sumOf = (response: ExponentialResponse): number => response.terms.reduce((sum, { rise }) => sum + rise, 0);

/** Greatest relative deviation of two responses at 400 times that have nothing to do with those fitted or judged, and at both ends. */
const apart = (one: (time: Time) => PipeResistance, other: (time: Time) => PipeResistance, from = MINUTE, to = YEARS_20): number => {
  const times = Array.from({ length: 401 }, (_, i) => seconds(Math.min(to, from * (to / from) ** (i / 400))));
  return Math.max(...times.map((time) => Math.abs(one(time) / other(time) - 1)));
};

/** Pipes as they are laid: distances and depths of trenches for one to three pipes, in soils of every kind. */
const cases = fc
  .record({
    top: between(0.8, 2.5),
    across: between(0.3, 1),
    down: between(0.3, 1),
    count: fc.integer({ min: 1, max: 3 }),
    trenches: fc.integer({ min: 1, max: 8 }),
    radius: between(0.01, 0.03),
    conductivity: between(0.3, 3),
    diffusivity: between(2e-7, 1.5e-6),
    surface: fc.constantFrom(isothermal, film(20), film(4), adiabatic),
  })
  .map(({ top, across, down, count, trenches, radius, conductivity, diffusivity, surface }): GroundResponseInput => {
    const places: Places = [
      [0, top],
      [across, top + down],
      [across / 3, top + 2 * down],
    ];
    return inputOf(places.slice(0, count), trenches, {
      pipe: { outsideDiameter: diameterMetres(2 * radius) },
      soil: soilOf(conductivity, diffusivity),
      surface,
    });
  });
const holds = (property: (input: GroundResponseInput) => void, numRuns = 60): void => {
  fc.assert(
    fc.property(cases, (input) => {
      property(input);
    }),
    { numRuns },
  );
};

describe('a ground response by exponentials', () => {
  const table = Object.entries(SECTIONS).flatMap(([section, places]) =>
    [1, 4].flatMap((trenches) =>
      Object.entries({ isothermal, film: film(6), adiabatic }).map(([name, surface]) => ({ section, trenches, name, places, surface })),
    ),
  );

  it.each(table)('follows that of $trenches × $section below a surface $name within 1.5e-4', ({ places, trenches, surface }) => {
    for (const diffusivity of [2e-7, 6e-7, 1.5e-6]) {
      const input = inputOf(places, trenches, { surface, soil: soilOf(1.5, diffusivity) });
      const response = exponentialResponse(input);
      const off = apart(response.riseAfter, groundResponse(input).riseAfter);
      expect(off).toBeLessThan(1.5e-4);
      expect(off).toBeLessThan(response.fit.largestError * 1.02);
      expect(response.fit.largestError).toBeLessThan(1.5e-4);
      expect(response.fit.optimality).toBeLessThan(1e-10);
    }
  });

  it('says truly how far it is off and where, for pipes anywhere', () => {
    holds((input) => {
      const response = exponentialResponse(input);
      const exact = groundResponse(input);
      const { from, to, largestError, largestErrorAt, optimality } = response.fit;
      expect(Math.abs(response.riseAfter(largestErrorAt) / exact.riseAfter(largestErrorAt) - 1)).toBeCloseTo(largestError, 10);
      expect(apart(response.riseAfter, exact.riseAfter)).toBeLessThan(largestError * 1.05);
      expect(largestError).toBeLessThan(3e-4);
      expect(optimality).toBeLessThan(1e-10);
      expect(from).toBeCloseTo(MINUTE, 9);
      expect(to / YEARS_20).toBeCloseTo(1, 12);
    });
  });

  it('has positive parts, fastest first, that add up to the steady rise', () => {
    holds((input) => {
      const response = exponentialResponse(input);
      for (const [index, { timeConstant, rise }] of response.terms.entries()) {
        expect(rise).toBeGreaterThan(0);
        expect(timeConstant).toBeGreaterThan(response.terms[index - 1]?.timeConstant ?? 0);
      }
      expect(response.terms.length).toBeLessThanOrEqual(26);
      expect(response.steadyRise === undefined).toBe(input.surface?.type === 'adiabatic');
      expect(response.steadyRise).toBe(groundResponse(input).steadyRise);
      if (response.steadyRise !== undefined) expect(sumOf(response) / response.steadyRise).toBeCloseTo(1, 9);
    });
  });

  it('rises with time from 0, to the sum of its parts', () => {
    fc.assert(
      fc.property(cases, between(Math.log(1), Math.log(1e11)), (input, log) => {
        const response = exponentialResponse(input);
        const rise = response.riseAfter(seconds(Math.exp(log)));
        expect(rise).toBeGreaterThan(0);
        expect(response.riseAfter(seconds(1.01 * Math.exp(log)))).toBeGreaterThanOrEqual(rise);
        expect(rise).toBeLessThanOrEqual(sumOf(response) * (1 + 1e-14));
        expect(response.riseAfter(seconds(0))).toBe(0);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps its steady rise where 20 years are far from it: pipes 50 m deep, and the slowest soil there is', () => {
    for (const input of [inputOf([[0, 50]], 1), inputOf([[0, 1.2]], 1, { soil: soilOf(0.01, 1e-10) })]) {
      const response = exponentialResponse(input);
      expect(apart(response.riseAfter, groundResponse(input).riseAfter)).toBeLessThan(1.5e-4);
      expect(sumOf(response) / (response.steadyRise ?? Number.NaN)).toBeCloseTo(1, 9);
    }
  });

  it('is unchanged when lengths are scaled with the root of the diffusivity, and goes with 1/conductivity', () => {
    fc.assert(
      fc.property(between(0.6, 2.4), (c) => {
        const places: Places = [
          [0, 1.2],
          [0.3, 1.9],
        ];
        const of = (size: number, conductivity: number): ExponentialResponse =>
          exponentialResponse({
            layout: layoutOf(
              places.map(([x, depth]) => [size * x, size * depth]),
              3,
              3 * size,
            ),
            pipe: { outsideDiameter: diameterMetres(0.032 * size) },
            soil: soilOf(conductivity, 6e-7 * size * size),
          });
        const [plain, scaled, conducting] = [of(1, 1.5), of(c, 1.5), of(1, 1.5 * c)];
        expect(apart(scaled.riseAfter, plain.riseAfter)).toBeLessThan(1e-8);
        expect(apart((time) => (conducting.riseAfter(time) * c) as PipeResistance, plain.riseAfter)).toBeLessThan(1e-12);
      }),
      { numRuns: 20 },
    );
  });

  it('is what its parts do to one watt stepped hour by hour', () => {
    const response = exponentialResponse(stacked);
    const states = response.terms.map(() => 0);
    for (let hour = 0; hour < 5000; hour += 1)
      for (const [k, { timeConstant, rise }] of response.terms.entries())
        states[k] = rise + ((states[k] ?? 0) - rise) * Math.exp(-3600 / timeConstant);
    expect(states.reduce((sum, state) => sum + state, 0)).toBeCloseTo(response.riseAfter(seconds(5000 * 3600)), 12);
  });
});

describe('one fit for every soil', () => {
  it('gives in each soil what a fit for that soil gives', () => {
    for (const surface of [isothermal, adiabatic, film(6)]) {
      const { inSoil } = exponentialGeometry({ ...stacked, surface });
      for (const diffusivity of [2e-7, 3.3e-7, 6e-7, 1.5e-6]) {
        const soil = soilOf(0.9, diffusivity);
        const input = { ...stacked, surface, soil };
        const response = inSoil(soil);
        expect(apart(response.riseAfter, exponentialResponse(input).riseAfter)).toBeLessThan(3e-4);
        expect(apart(response.riseAfter, groundResponse(input).riseAfter)).toBeLessThan(1.5e-4);
        expect(response.steadyRise).toBe(groundResponse(input).steadyRise);
        expect(response.fit.from).toBeLessThan(MINUTE * 1.000001);
        expect(response.fit.to).toBeGreaterThan(YEARS_20 * 0.999999);
      }
    }
  });

  it('says truly how far it is off between the times that it says', () => {
    const soil = soilOf(1.5, 6e-7);
    const { riseAfter, fit } = exponentialGeometry(stacked).inSoil(soil);
    expect([fit.from, fit.to / YEARS_20]).toEqual([expect.closeTo(20, 9), expect.closeTo(2.5, 9)]);
    expect(apart(riseAfter, groundResponse(stacked).riseAfter, fit.from, fit.to)).toBeLessThan(fit.largestError * 1.02);
  });

  it('is bound to the soils that it was asked for', () => {
    const geometry = exponentialGeometry({
      ...stacked,
      leastDiffusivity: squareMetresPerSecond(4e-7),
      greatestDiffusivity: squareMetresPerSecond(8e-7),
    });
    expect(geometry.inSoil(soilOf(1.5, 4e-7)).terms.length).toBeGreaterThan(10);
    expect(() => geometry.inSoil(soilOf(1.5, 3.9e-7))).toThrow(/soil\.diffusivity.*fitted for other soils/u);
    expect(() => exponentialGeometry({ ...stacked, surface: film(6) }).inSoil(soilOf(1.5, 1.6e-6))).toThrow(/soil\.diffusivity/u);
    const reversed = { ...stacked, leastDiffusivity: squareMetresPerSecond(8e-7), greatestDiffusivity: squareMetresPerSecond(4e-7) };
    expect(() => exponentialGeometry(reversed)).toThrow(/greatestDiffusivity/u);
  });
});

describe('a pair of pipes', () => {
  const pairOf = (spacing: number, trenches: number, surface: GroundSurface): GroundResponseInput =>
    inputOf(
      [
        [-spacing / 2, 1.5],
        [spacing / 2, 1.5],
      ],
      trenches,
      { surface },
    );

  it('answers with its walls apart as sums over all pipes with their signs say', () => {
    for (const surface of [isothermal, adiabatic])
      for (const trenches of [1, 4]) {
        const alone = groundResponse(inputOf([[0, 1.5]], 1, { surface }));
        const signed = Array.from({ length: trenches }, (_, n) => [
          { x: 3.048 * n - 0.3, sign: 1 },
          { x: 3.048 * n + 0.3, sign: -1 },
        ]).flat();
        const exact = (time: Time): PipeResistance => {
          const line = (square: number): number => e1(square / (4 * 6e-7 * time)) / (4 * Math.PI * 1.5);
          const others = signed.flatMap((from, i) =>
            signed.map((to, j) => {
              const across = (from.x - to.x) ** 2;
              const image = line(across + 9);
              return i === j ? 0 : from.sign * to.sign * (line(across) + (surface === adiabatic ? image : -image));
            }),
          );
          return (alone.riseAfter(time) + others.reduce((sum, rise) => sum + rise, 0) / signed.length) as PipeResistance;
        };
        const { together, apart: opposed } = exponentialPair(pairOf(0.6, trenches, surface));
        expect(apart(opposed.riseAfter, exact)).toBeLessThan(1.5e-4);
        expect(apart(opposed.riseAfter, exact)).toBeLessThan(opposed.fit.largestError * 1.02);
        expect((opposed.steadyRise ?? Number.NaN) / exact(seconds(1e12))).toBeCloseTo(1, 5);
        expect(sumOf(opposed) / (opposed.steadyRise ?? Number.NaN)).toBeCloseTo(1, 9);
        expect(together.terms).toEqual(exponentialResponse(pairOf(0.6, trenches, surface)).terms);
      }
  });

  it('answers both ways like one alone when far apart, and less apart than together when near', () => {
    const alone = exponentialResponse(inputOf([[0, 1.5]], 1));
    const far = exponentialPair(pairOf(80, 1, isothermal));
    for (const response of [far.together, far.apart]) expect(apart(response.riseAfter, alone.riseAfter)).toBeLessThan(2e-3);
    fc.assert(
      fc.property(between(0.1, 2), between(Math.log(1e6), Math.log(YEARS_20)), (spacing, log) => {
        const near = exponentialPair(pairOf(spacing, 1, isothermal));
        const time = seconds(Math.exp(log));
        expect(near.apart.riseAfter(time)).toBeLessThan(near.together.riseAfter(time) * (1 + 1e-4));
        for (const { rise } of near.apart.terms) expect(rise).toBeGreaterThan(0);
      }),
      { numRuns: 30 },
    );
  });

  it('is refused at unequal depth, of one pipe and of three', () => {
    const others: readonly Places[] = [
      [[0, 1.5]],
      [
        [0, 1.5],
        [0.3, 1.6],
      ],
      [
        [0, 1.5],
        [0.3, 1.5],
        [0.6, 1.5],
      ],
    ];
    for (const places of others) expect(() => exponentialPair(inputOf(places, 1))).toThrow(/layout\.pipes.*two pipes at equal depth/u);
  });
});

describe('what a fit of exponentials refuses', () => {
  const numbersOf = (response: ExponentialResponse): unknown => [response, response.riseAfter(days(30))];
  const surfaces = [film(15), adiabatic];

  it('is every impossible field by its name', () => {
    const example: GroundResponseInput = { ...stacked, surface: isothermal, selfTerm: 'cylinder' };
    const more = surfaces.map((surface) => ({ ...example, surface }));
    refuses((input) => numbersOf(exponentialResponse(input)), groundResponseInputShape, example, { more });
    const pair = { ...example, layout: inputOf(SECTIONS['two pipes, side by side'] ?? [], 4).layout };
    const pairs = surfaces.map((surface) => ({ ...pair, surface }));
    const bothOf = (input: GroundResponseInput): unknown => Object.values(exponentialPair(input)).map(numbersOf);
    refuses(bothOf, groundResponseInputShape, pair, { more: pairs });
    const geometry: ExponentialGeometryInput = {
      layout: stacked.layout,
      pipe: stacked.pipe,
      surface: isothermal,
      leastDiffusivity: squareMetresPerSecond(3e-7),
      greatestDiffusivity: squareMetresPerSecond(9e-7),
    };
    const inSoil = (input: ExponentialGeometryInput): unknown => numbersOf(exponentialGeometry(input).inSoil(stacked.soil));
    refuses(inSoil, exponentialGeometryInputShape, geometry, { more: surfaces.map((surface) => ({ ...geometry, surface })) });
    const { inSoil: respond } = exponentialGeometry(stacked);
    refuses(({ soil }) => numbersOf(respond(soil)), { soil: groundResponseInputShape.soil }, { soil: stacked.soil });
  });

  it('is a line as the pipe’s own heat, and an impossible time', () => {
    expect(() => exponentialResponse({ ...stacked, selfTerm: 'line' })).toThrow(/selfTerm.*cylinder/u);
    for (const time of [Number.NaN, -1, Infinity, 1e13, '3600']) expect(() => exponentialResponse(stacked).riseAfter(time as Time)).toThrow(/time/u);
  });
});
