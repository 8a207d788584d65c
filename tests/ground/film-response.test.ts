import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  exponentialFilmResponse,
  filmResponse,
  type FilmResponseInput,
  filmResponseInputShape,
  groundResponse,
  type GroundSurface,
  periodicFilmInputShape,
  periodicFilmResponse,
  periodicResponse,
} from '../../src/ground/index.js';
import { days, diameterMetres, diameterMillimetres, seconds, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { layoutOf, soilOf } from './support.js';
import { between, fieldCases, type FieldCase, layoutOfCase } from './field-cases.js';

const inputOf = (field: FieldCase, coefficient: number): FilmResponseInput => ({
  layout: layoutOfCase(field),
  pipe: { outsideDiameter: diameterMetres(2 * field.radius) },
  soil: soilOf(field.conductivity, field.diffusivity),
  coefficient: wattsPerSquareMetreKelvin(coefficient),
});
const coefficients = between(Math.log(0.21), Math.log(100)).map(Math.exp);
const near = (a: number, b: number, relative: number): void => {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)));
};
const holds = (property: (field: FieldCase, coefficient: number) => void, numRuns = 60): void => {
  fc.assert(
    fc.property(fieldCases, coefficients, (field, coefficient) => {
      property(field, coefficient);
    }),
    { numRuns },
  );
};

describe('ground response below a film', () => {
  it('lies between an isothermal and a sealed surface, for every pipe, and is the lower the better the film', () => {
    holds((field, coefficient) => {
      const { coefficient: _, ...bare } = inputOf(field, coefficient);
      const time = seconds(field.time);
      const under = (surface: GroundSurface): readonly number[] =>
        groundResponse({ ...bare, surface })
          .pipeRisesAfter(time)
          .flat();
      const film = (of: number): readonly number[] => filmResponse(inputOf(field, of)).pipeRisesAfter(time).flat();
      const order = [under({ type: 'isothermal' }), film(3 * coefficient), film(coefficient), under({ type: 'adiabatic' })];
      for (const [index, rises] of order.entries())
        for (const [pipe, rise] of rises.entries()) expect(rise).toBeGreaterThanOrEqual((order[index - 1]?.[pipe] ?? 0) * (1 - 1e-12));
    });
  });

  it('below a perfect film is that of an isothermal surface', () => {
    holds((field) => {
      const { coefficient: _, ...bare } = inputOf(field, 1e9);
      near(filmResponse(inputOf(field, 1e9)).riseAfter(seconds(field.time)), groundResponse(bare).riseAfter(seconds(field.time)), 1e-7);
    });
  });

  it('is unchanged when lengths are scaled by c, times by c² and the film by 1/c', () => {
    fc.assert(
      fc.property(fieldCases, coefficients, between(0.5, 2), (field, coefficient, c) => {
        const pipes = field.pipes.map(([x, depth]) => [c * x, c * depth] as const);
        const scaled = filmResponse(inputOf({ ...field, pipes, spacing: c * field.spacing, radius: c * field.radius }, coefficient / c));
        near(scaled.riseAfter(seconds(c * c * field.time)), filmResponse(inputOf(field, coefficient)).riseAfter(seconds(field.time)), 1e-8);
      }),
      { numRuns: 40 },
    );
  });

  it('tends to its steady value, the closed form for one pipe, and has the pipes for its mean', () => {
    holds((field, coefficient) => {
      const response = filmResponse(inputOf(field, coefficient));
      near(response.riseAfter(seconds(1e12)), response.steadyRise ?? Number.NaN, 0.02);
      const each = response.pipeRisesAfter(seconds(field.time)).flat();
      near(each.reduce((sum, rise) => sum + rise, 0) / each.length, response.riseAfter(seconds(field.time)), 1e-10);
    }, 20);
  });

  it('says by how much added depth is too low for snow: at 90 days 7 % with stacked pairs, 0.1 % where grass covers them', () => {
    const stacked: FieldCase = {
      pipes: [
        [0, 1.2],
        [0, 1.8],
      ],
      trenches: 6,
      spacing: 3,
      radius: 0.0167,
      conductivity: 1.5,
      diffusivity: 6e-7,
      time: 1,
    };
    const short = (coefficient: number): number => {
      const { coefficient: film, ...bare } = inputOf(stacked, coefficient);
      return (
        groundResponse({ ...bare, surface: { type: 'film', coefficient: film } }).riseAfter(days(90)) /
        filmResponse(inputOf(stacked, coefficient)).riseAfter(days(90))
      );
    };
    expect(1 - short(0.3)).toBeCloseTo(0.068, 2);
    expect(1 - short(2.5)).toBeLessThan(0.005);
    const codes = (coefficient: number): readonly string[] => {
      const { coefficient: film, ...bare } = inputOf(stacked, coefficient);
      return groundResponse({ ...bare, surface: { type: 'film', coefficient: film } }).findings.map(({ code }) => code);
    };
    // Half the depth of the upper pipe is added at 2.5 W/(m2.K).
    expect([codes(2.4).includes('film-as-added-depth'), codes(2.6).includes('film-as-added-depth')]).toEqual([true, false]);
    expect(filmResponse(inputOf(stacked, 0.3)).findings.map(({ code }) => code)).not.toContain('film-as-added-depth');
    expect(1 - short(5)).toBeLessThan(0.001);
  });

  it('keeps as exponentials to what the fit says', () => {
    holds((field, coefficient) => {
      const input = inputOf(field, coefficient);
      const terms = exponentialFilmResponse(input);
      expect(terms.fit.largestError).toBeLessThan(5e-4);
      const time = seconds(Math.min(field.time, terms.fit.to));
      near(terms.riseAfter(time), filmResponse(input).riseAfter(time), 1.5 * terms.fit.largestError);
    }, 8);
  });
});

describe('periodic response below a film', () => {
  const swing = ({ amplitude, lag }: { amplitude: number; lag: number }, period: number): readonly [number, number] => {
    const angle = (2 * Math.PI * lag) / period;
    return [amplitude * Math.cos(angle), amplitude * Math.sin(angle)];
  };

  it('is that of an isothermal surface below a perfect film', () => {
    holds((field) => {
      const period = days(365);
      const { coefficient: _, ...bare } = inputOf(field, 1e9);
      near(periodicFilmResponse({ ...inputOf(field, 1e9), period }).amplitude, periodicResponse({ ...bare, period }).amplitude, 1e-7);
    }, 10);
  });

  it('is what steps of the same response add up to', () => {
    const input: FilmResponseInput = {
      layout: layoutOf(
        [
          [-0.3, 1.2],
          [0.2, 1.7],
        ],
        2,
        3,
      ),
      pipe: { outsideDiameter: diameterMillimetres(32) },
      soil: soilOf(1.5, 6e-7),
      coefficient: wattsPerSquareMetreKelvin(0.5),
    };
    const period = 365 * 86_400;
    const response = filmResponse(input);
    // From a second to forty years, where steps are summed with a cosine and a sine over each of them.
    const places = Array.from({ length: 4001 }, (_, index) => 1.26e9 ** (index / 4000));
    const rises = response.risesAfter(places.map((place) => seconds(place)));
    let [real, imaginary] = [rises[0] ?? 0, 0];
    for (const [index, place] of places.entries()) {
      const next = places[index + 1];
      if (next === undefined) break;
      const gained = (rises[index + 1] ?? 0) - (rises[index] ?? 0);
      const mean = (of: (angle: number) => number): number => (of((2 * Math.PI * place) / period) + of((2 * Math.PI * next) / period)) / 2;
      real += gained * mean(Math.cos);
      imaginary += gained * mean(Math.sin);
    }
    const [a, b] = swing(periodicFilmResponse({ ...input, period: seconds(period) }), period);
    expect(Math.abs(a - real)).toBeLessThan(5e-4);
    expect(Math.abs(b - imaginary)).toBeLessThan(5e-4);
  });
});

describe('what a response below a film refuses', () => {
  const example: FilmResponseInput = {
    layout: layoutOf([[0, 1.5]], 2, 3),
    pipe: { outsideDiameter: diameterMillimetres(32) },
    soil: soilOf(1.5, 6e-7),
    selfTerm: 'cylinder',
    coefficient: wattsPerSquareMetreKelvin(0.5),
  };

  it('names every impossible field', () => {
    refuses((input) => filmResponse(input).riseAfter(days(30)), filmResponseInputShape, example, { more: [{ ...example, selfTerm: 'line' }] });
    refuses(exponentialFilmResponse, filmResponseInputShape, example);
    refuses(
      periodicFilmResponse,
      periodicFilmInputShape,
      { ...example, period: days(365) },
      { more: [{ ...example, selfTerm: 'line', period: days(365) }] },
    );
    expect(() => exponentialFilmResponse({ ...example, selfTerm: 'line' })).toThrow(/selfTerm/u);
    expect(() => filmResponse({ ...example, coefficient: wattsPerSquareMetreKelvin(0.01) })).toThrow(/coefficient/u);
  });
});
