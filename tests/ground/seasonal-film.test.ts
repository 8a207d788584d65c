import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmResponse, seasonalFilm, type SeasonalFilmInput, seasonalFilmInputShape } from '../../src/ground/index.js';
import { diameterMillimetres, seconds, squareMetreKelvinPerWatt, wattsPerPipeMetre, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { between } from './field-cases.js';
import { depthOf, snowDifferences } from './snow-differences.js';
import { layoutOf, soilOf } from './support.js';

const SNOW = [3, 3.5, 2, 0, 0, 0, 0, 0, 0, 0, 0.5, 2];
const HEAT = [-12, -11, -8, -4, 0, 0, 0, 0, 0, -4, -8, -11];
const YEAR = 31_536_000;
const inputOf = (
  snow: readonly number[],
  heat: readonly number[],
  pipes: readonly (readonly [number, number])[],
  trenches = 1,
): SeasonalFilmInput => ({
  layout: layoutOf(pipes, trenches, 3),
  pipe: { outsideDiameter: diameterMillimetres(33.4) },
  soil: soilOf(1.5, 6e-7),
  coefficient: wattsPerSquareMetreKelvin(15),
  snowResistances: snow.map((each) => squareMetreKelvinPerWatt(each)),
  heat: heat.map((each) => wattsPerPipeMetre(each)),
});
const PAIR = [
  [0, 1.2],
  [0.2, 1.8],
] as const;
/** Changes under months of heat by steps of a response below a constant film, forty years of them. */
const bySteps = (coefficient: number): readonly number[] => {
  const { layout, pipe, soil } = inputOf(SNOW, HEAT, PAIR, 2);
  const response = filmResponse({ layout, pipe, soil, coefficient: wattsPerSquareMetreKelvin(coefficient) });
  const rises = response.risesAfter(Array.from({ length: 481 }, (_, index) => seconds((index * YEAR) / 12)));
  const rest = (HEAT.reduce((sum, each) => sum + each, 0) / 12) * ((response.steadyRise ?? Number.NaN) - (rises[480] ?? Number.NaN));
  return HEAT.map((_, end) =>
    rises
      .slice(1)
      .reduce((sum, rise, back) => sum + (rise - (rises[back] ?? Number.NaN)) * (HEAT[(((end - back) % 12) + 12) % 12] ?? Number.NaN), rest),
  );
};
const largest = (values: readonly number[]): number => Math.max(...values.map((each) => Math.abs(each)));
const apart = (a: readonly number[], b: readonly number[]): number => largest(a.map((each, index) => each - (b[index] ?? Number.NaN)));

describe('a loop below snow of a season', () => {
  it('is within 1 % of the greatest change of finite differences in two dimensions, snow against open and cover against open', () => {
    const soil = { conductivity: 1.5, diffusivity: 6e-7 };
    const row = 8;
    const run = (resistances: readonly number[]): readonly number[] =>
      snowDifferences({ ...soil, row, heat: HEAT, resistances: resistances.map((each) => each + 1 / 15) });
    const open = run(HEAT.map(() => 0));
    const { wallChanges, openChanges, coveredChanges } = seasonalFilm(inputOf(SNOW, HEAT, [[0, depthOf(row)]]));
    const more = (changes: readonly number[], from: readonly number[]): readonly number[] =>
      changes.map((each, month) => each - (from[month] ?? Number.NaN));
    const greatest = largest(wallChanges);
    expect(largest(more(wallChanges, openChanges))).toBeGreaterThan(0.05 * greatest);
    expect(apart(more(wallChanges, openChanges), more(run(SNOW), open))).toBeLessThan(0.01 * greatest);
    expect(apart(more(coveredChanges, openChanges), more(run(HEAT.map(() => 3.5)), open))).toBeLessThan(0.01 * greatest);
  }, 30_000);

  it('without snow, and below its constant films, is what steps of a film response add up to', () => {
    const changes = seasonalFilm(inputOf(SNOW, HEAT, PAIR, 2));
    const bare = seasonalFilm(
      inputOf(
        SNOW.map(() => 0),
        HEAT,
        PAIR,
        2,
      ),
    );
    const steps = bySteps(15);
    const tolerance = 3e-4 * largest(steps);
    expect(apart(bare.wallChanges, steps)).toBeLessThan(tolerance);
    expect(apart(bare.wallChanges, bare.openChanges)).toBeLessThan(1e-6);
    expect(bare.equivalentCoefficient).toBeCloseTo(15, 9);
    expect(apart(changes.openChanges, steps)).toBeLessThan(tolerance);
    expect(apart(changes.coveredChanges, bySteps(1 / (1 / 15 + 3.5)))).toBeLessThan(tolerance);
    const month = changes.month - 1;
    expect(bySteps(changes.equivalentCoefficient ?? Number.NaN)[month] ?? 0).toBeCloseTo(changes.wallChanges[month] ?? 1, 2);
  });

  it('for heat of one sign changes walls between open and covered, the more the more snow, and in proportion to the heat', () => {
    fc.assert(
      fc.property(
        fc.array(between(0, 4), { minLength: 12, maxLength: 12 }),
        fc.array(between(1, 20), { minLength: 12, maxLength: 12 }),
        between(-3, 3),
        (snow, heat, factor) => {
          const run = seasonalFilm(inputOf(snow, heat, [[0, 1.4]]));
          const less = seasonalFilm(
            inputOf(
              snow.map((each) => each / 2),
              heat,
              [[0, 1.4]],
            ),
          );
          const scaled = seasonalFilm(
            inputOf(
              snow,
              heat.map((each) => factor * each),
              [[0, 1.4]],
            ),
          );
          // What the harmonics of the year leave out of the sides of the months.
          const slack = 2e-3 * largest(run.wallChanges);
          for (const [month, change] of run.wallChanges.entries()) {
            expect(change).toBeGreaterThanOrEqual((run.openChanges[month] ?? Infinity) - slack);
            expect(change).toBeGreaterThanOrEqual((less.wallChanges[month] ?? Infinity) - slack);
            expect(change).toBeLessThanOrEqual((run.coveredChanges[month] ?? -Infinity) + slack);
            expect(scaled.wallChanges[month]).toBeCloseTo(factor * change, 7);
          }
        },
      ),
      { numRuns: 6 },
    );
  });

  it('does not change when the field is mirrored', () => {
    const mirrored = PAIR.map(([x, depth]) => [-x, depth] as const);
    expect(apart(seasonalFilm(inputOf(SNOW, HEAT, PAIR, 3)).wallChanges, seasonalFilm(inputOf(SNOW, HEAT, mirrored, 3)).wallChanges)).toBeLessThan(
      1e-9,
    );
  });

  it('without heat has nothing to tell', () => {
    const { wallChanges } = seasonalFilm(
      inputOf(
        SNOW,
        HEAT.map(() => 0),
        PAIR,
      ),
    );
    expect(largest(wallChanges)).toBe(0);
  });

  it('refuses what cannot be', () => {
    const example: SeasonalFilmInput = { ...inputOf(SNOW, HEAT, [[0, 1.5]]), selfTerm: 'line' };
    refuses(seasonalFilm, seasonalFilmInputShape, example);
    expect(() => seasonalFilm({ ...example, heat: example.heat.slice(1) })).toThrow(/heat/u);
    expect(() => seasonalFilm({ ...example, snowResistances: SNOW.map(() => squareMetreKelvinPerWatt(10)) })).toThrow(/snowResistances\.0/u);
  });
});
