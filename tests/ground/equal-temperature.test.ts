import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equalTemperatureMean } from '../../src/ground/equal-temperature-mean.js';
import { equalFluxMean } from '../../src/ground/fitted-mean.js';
import { groundPipes } from '../../src/ground/ground-pipes.js';
import {
  equalTemperatureGeometry,
  equalTemperatureResistance,
  equalTemperatureResponse,
  type ExponentialGeometryInput,
  exponentialGeometryInputShape,
  exponentialResponse,
  type GroundResponseInput,
  groundResponseInputShape,
  type GroundSurface,
  periodicResponse,
} from '../../src/ground/index.js';
import { tiedPipes } from '../../src/ground/tied-pipes.js';
import { transferKernel } from '../../src/ground/transfer-kernel.js';
import { type Complex, over, times } from '../../src/numerics/index.js';
import { days, diameterMetres, seconds, squareMetresPerSecond, type Time, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import type { Point } from '../support/line-source.js';
import { layoutOf, soilOf } from './support.js';
import { tiedRises } from './tied-steps.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const isothermal: GroundSurface = { type: 'isothermal' };
const adiabatic: GroundSurface = { type: 'adiabatic' };
const film = (coefficient: number): GroundSurface => ({ type: 'film', coefficient: wattsPerSquareMetreKelvin(coefficient) });
const soil = soilOf(1.5, 6e-7);
const RADIUS = 0.0167;

const inputOf = (places: readonly Point[], trenches = 1, more: Partial<GroundResponseInput> = {}, spacing = 3): GroundResponseInput => ({
  layout: layoutOf(places, trenches, spacing),
  pipe: { outsideDiameter: diameterMetres(2 * RADIUS) },
  soil,
  ...more,
});
const STACKED: readonly Point[] = [
  [0, 1.2],
  [0, 1.8],
];
const SIX: readonly Point[] = [1.2, 1.5, 1.8].flatMap((depth): Point[] => [
  [-0.3, depth],
  [0.3, depth],
]);
const LOPSIDED: readonly Point[] = [
  [0, 0.9],
  [0.5, 1.3],
  [0.2, 1.9],
];

/** One to three pipes anywhere in one to five trenches. */
const cases = fc
  .record({
    top: between(0.7, 2.5),
    across: between(0.2, 1),
    down: between(0.2, 1),
    count: fc.integer({ min: 1, max: 3 }),
    trenches: fc.integer({ min: 1, max: 5 }),
    diffusivity: between(2e-7, 1.5e-6),
    surface: fc.constantFrom(isothermal, film(10), adiabatic),
  })
  .map(({ top, across, down, count, trenches, diffusivity, surface }): GroundResponseInput => {
    const places: readonly Point[] = [
      [0, top],
      [across, top + down],
      [across / 3, top + 2 * down],
    ];
    return inputOf(places.slice(0, count), trenches, { surface, soil: soilOf(1.2, diffusivity) });
  });

describe('walls that share one temperature', () => {
  const sections = { stacked: STACKED, six: SIX, lopsided: LOPSIDED };
  const table = Object.entries(sections).flatMap(([name, places]) =>
    [isothermal, adiabatic].map((surface) => ({ name, places, surface, type: surface.type })),
  );

  it.each(table)('of $name pipes below a surface $type rise as shares of heat stepped through time make them', ({ places, surface }) => {
    const first = 2e-3;
    const expected = tiedRises({ pipes: places, radius: RADIUS, sealed: surface === adiabatic }, first, 5, 12);
    const { riseAfter } = equalTemperatureMean(groundPipes(inputOf(places, 1, { surface })));
    for (const [decade, rise] of expected.entries()) expect(Math.abs(riseAfter(first * 10 ** decade) / rise - 1)).toBeLessThan(2e-5);
  });

  it('rise in three trenches as those of the nine pipes in one', () => {
    const trenches = [0, 3, 6].flatMap((x) => LOPSIDED.map(([u, z]): Point => [x + u, z]));
    const [together, apart] = [inputOf(trenches), inputOf(LOPSIDED, 3)].map((input) => equalTemperatureMean(groundPipes(input)));
    for (const spread of [0.01, 0.3, 5, 100]) expect(together?.riseAfter(spread)).toBeCloseTo(apart?.riseAfter(spread) ?? Number.NaN, 9);
  });

  it('never rise more than the mean of pipes of equal heat in the end, nor when heat grows at any steady rate', () => {
    fc.assert(
      fc.property(cases, between(Math.log(1e-3), Math.log(1e4)), (input, log) => {
        const pipes = groundPipes(input);
        const tied = tiedPipes(pipes.places);
        const { rise, excess } = tied(transferKernel(Math.exp(log), pipes));
        expect(rise).toBeGreaterThan(0);
        expect(excess).toBeGreaterThanOrEqual(-1e-13 * rise);
        const [{ steady }, equalFlux] = [equalTemperatureMean(pipes), equalFluxMean(pipes)];
        expect(steady ?? 0).toBeLessThanOrEqual((equalFlux.steady ?? 0) * (1 + 1e-14));
      }),
    );
  });

  it('of pipes at very unlike depth are for a while a little above that mean, as stepping says too', () => {
    const places: readonly Point[] = [0, 1.5].flatMap((x): Point[] => [
      [x + 0.21, 0.6],
      [x + 0.44, 0.5],
      [x + 0.01, 1.64],
    ]);
    const pipes = groundPipes(inputOf(places));
    const [equalFlux, { riseAfter }] = [equalFluxMean(pipes), equalTemperatureMean(pipes)];
    const [first, decades] = [2e-3, 4];
    const stepped = tiedRises({ pipes: places, radius: RADIUS, sealed: false }, first, decades, 12);
    const above = stepped.map((rise, decade) => rise / equalFlux.riseAfter(first * 10 ** decade) - 1);
    expect(above[3]).toBeGreaterThan(0.001);
    expect(above[3]).toBeLessThan(0.0025);
    for (const decade of [2, 4]) expect(above[decade]).toBeLessThan(-0.005);
    // With 12 steps a decade it is the stepping that is off by 1.4e-4; with 40, which take long, by 4e-5.
    for (const [decade, rise] of stepped.entries()) expect(Math.abs(riseAfter(first * 10 ** decade) / rise - 1)).toBeLessThan(2e-4);
  });

  it('are followed by decays as nearly as the fit says', () => {
    fc.assert(
      fc.property(cases, between(Math.log(60), Math.log(6e8)), (input, log) => {
        const { riseAfter, fit } = equalTemperatureResponse(input);
        const { conductivity, diffusivity } = input.soil;
        const exact = equalTemperatureMean(groundPipes(input)).riseAfter(diffusivity * Math.exp(log)) / (4 * Math.PI * conductivity);
        expect(Math.abs(riseAfter(seconds(Math.exp(log))) / exact - 1)).toBeLessThan(fit.largestError * 1.05);
        expect(fit.largestError).toBeLessThan(3e-4);
        expect(fit.optimality).toBeLessThan(1e-10);
      }),
      { numRuns: 60 },
    );
  });

  it('have positive parts that add up to the steady rise, which is that of the steady state', () => {
    fc.assert(
      fc.property(cases, (input) => {
        const { terms, steadyRise, heatShares, wallCondition } = equalTemperatureResponse(input);
        for (const { rise } of terms) expect(rise).toBeGreaterThan(0);
        expect(wallCondition).toBe('equal temperature');
        expect([steadyRise === undefined, heatShares === undefined]).toEqual([input.surface === adiabatic, input.surface === adiabatic]);
        if (steadyRise === undefined || heatShares === undefined) return;
        const added = input.surface?.type === 'film' ? input.soil.conductivity / input.surface.coefficient : 0;
        const lower = input.layout.pipes.map(({ x, depth }): Point => [x, depth + added]);
        const steady = equalTemperatureResistance({
          layout: layoutOf(lower, input.layout.trenches, input.layout.trenchSpacing),
          pipe: input.pipe,
          conductivity: input.soil.conductivity,
        });
        expect(terms.reduce((sum, { rise }) => sum + rise, 0) / steadyRise).toBeCloseTo(1, 9);
        expect(steadyRise / steady.resistance).toBeCloseTo(1, 9);
        for (const [index, share] of heatShares.flat().entries()) expect(share).toBeCloseTo(steady.heatShares.flat()[index] ?? Number.NaN, 6);
        expect(heatShares.flat().reduce((sum, share) => sum + share, 0)).toBeCloseTo(heatShares.flat().length, 9);
      }),
      { numRuns: 60 },
    );
  });

  it('of one pipe, and of a pair at equal depth, are exactly those of equal heat', () => {
    for (const places of [
      [[0, 1.5]],
      [
        [-0.2, 1.5],
        [0.2, 1.5],
      ],
    ] as const)
      for (const surface of [isothermal, adiabatic, film(6)]) {
        const { terms, steadyRise, heatShares } = equalTemperatureResponse(inputOf(places, 1, { surface }));
        const equalFlux = exponentialResponse(inputOf(places, 1, { surface }));
        expect([terms, steadyRise]).toEqual([equalFlux.terms, equalFlux.steadyRise]);
        if (heatShares !== undefined) for (const share of heatShares.flat()) expect(share).toBeCloseTo(1, 12);
      }
  });

  it('of trenches far apart are those of one', () => {
    const [one, far] = [inputOf(STACKED, 1), inputOf(STACKED, 3, {}, 300)].map(equalTemperatureResponse);
    for (const time of [days(1), days(30), days(365), days(3650)])
      expect((far?.riseAfter(time) ?? Number.NaN) / (one?.riseAfter(time) ?? Number.NaN)).toBeCloseTo(1, 3);
    for (const trench of far?.heatShares ?? [])
      for (const [i, share] of trench.entries()) expect(share).toBeCloseTo(one?.heatShares?.[0]?.[i] ?? Number.NaN, 3);
  });

  it('lie, at rest in ground that swings through the year, within 0.5 % of the swing of the surface from the plain mean over the pipes', () => {
    const year = days(365);
    const cis = (size: number, angle: number): Complex => ({ re: size * Math.cos(angle), im: size * Math.sin(angle) });
    const less = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
    for (const diffusivity of [3e-7, 6e-7, 1e-6]) {
      const swing = (places: readonly Point[]): Complex => {
        const { amplitude, lag } = periodicResponse({ ...inputOf(places), soil: soilOf(1.5, diffusivity), period: year });
        return cis(amplitude, (-2 * Math.PI * lag) / year);
      };
      // The upper, the lower wall by its own heat; their mean by equal heat of both is half the sum of that and of twice what each does to the other.
      const [upper, lower, mean] = [swing([[0, 1.2]]), swing([[0, 1.8]]), swing(STACKED)];
      const both = { re: upper.re + lower.re, im: upper.im + lower.im };
      const cross = less(mean, times({ re: 1 / 2, im: 0 }, both));
      // Equal walls: the heat of the upper pipe is to that of both as lower − cross to upper + lower − 2 cross.
      const share = over(less(lower, cross), less(less(both, cross), cross));
      const damping = Math.sqrt(Math.PI / (year * diffusivity));
      const wave = (depth: number): Complex => cis(Math.exp(-damping * depth), -damping * depth);
      const off = times(less(share, { re: 1 / 2, im: 0 }), less(wave(1.2), wave(1.8)));
      expect(Math.hypot(off.re, off.im)).toBeLessThan(0.005);
      expect(Math.hypot(off.re, off.im)).toBeGreaterThan(0.001);
    }
  });
});

describe('one fit of walls that share one temperature', () => {
  it('gives in each soil what a fit for that soil gives', () => {
    for (const surface of [isothermal, adiabatic, film(6)]) {
      const { inSoil } = equalTemperatureGeometry({ ...inputOf(LOPSIDED, 3), surface });
      for (const diffusivity of [2e-7, 6e-7, 1.5e-6]) {
        const own = equalTemperatureResponse(inputOf(LOPSIDED, 3, { surface, soil: soilOf(0.9, diffusivity) }));
        const response = inSoil(soilOf(0.9, diffusivity));
        for (const time of [60, 3600, 86400, 3e6, 3e7, 6e8])
          expect(response.riseAfter(seconds(time)) / own.riseAfter(seconds(time))).toBeCloseTo(1, 3);
        expect([response.wallCondition, response.steadyRise]).toEqual(['equal temperature', own.steadyRise]);
      }
    }
  });
});

describe('what walls that share one temperature refuse', () => {
  it('is every impossible field by its name', () => {
    const example: GroundResponseInput = { ...inputOf(STACKED, 2), surface: isothermal, selfTerm: 'cylinder' };
    const more = [film(15), adiabatic].map((surface) => ({ ...example, surface }));
    const numbersOf = (input: GroundResponseInput): unknown => {
      const response = equalTemperatureResponse(input);
      return [response, response.riseAfter(days(30))];
    };
    refuses(numbersOf, groundResponseInputShape, example, { more });
    const geometry: ExponentialGeometryInput = {
      layout: example.layout,
      pipe: example.pipe,
      surface: isothermal,
      leastDiffusivity: squareMetresPerSecond(3e-7),
      greatestDiffusivity: squareMetresPerSecond(9e-7),
    };
    refuses((input) => equalTemperatureGeometry(input).inSoil(soil), exponentialGeometryInputShape, geometry, {
      more: [film(15), adiabatic].map((surface) => ({ ...geometry, surface })),
    });
  });

  it('is a line as the pipe’s own heat, an impossible time, and more pipes than are solved for', () => {
    expect(() => equalTemperatureResponse(inputOf(STACKED, 1, { selfTerm: 'line' }))).toThrow(/selfTerm.*cylinder/u);
    expect(() => equalTemperatureResponse(inputOf(STACKED)).riseAfter(-1 as Time)).toThrow(/time/u);
    expect(() => equalTemperatureResponse(inputOf(STACKED, 201))).toThrow(/layout\.pipes/u);
  });
});
