import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  groundResponse,
  periodicResponse,
  pipeGround,
  type PipeGroundInput,
  pipeWalls,
  type PipeWallsInput,
  pipeWallsInputShape,
} from '../../src/ground/index.js';
import {
  celsius,
  dayOfYear,
  days,
  diameterMillimetres,
  kelvinDifference,
  wattsPerPipeMetre,
  wattsPerSquareMetreKelvin,
} from '../../src/units/index.js';
import { faultsOf } from '../support/bad-input.js';
import { between } from './field-cases.js';
import { layoutOf, soilOf } from './support.js';

const wave = { of: 'ground surface', mean: celsius(9), amplitude: kelvinDifference(11), coldestDay: dayOfYear(30), period: days(365) } as const;
const secondHarmonic = { amplitude: kelvinDifference(2), coldestDay: dayOfYear(100) };
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

describe('walls of pipes', () => {
  const wallsOf = (input: PipeGroundInput, heat: readonly number[]): ReturnType<typeof pipeWalls> => {
    const { wallCondition: _, ...rest } = input;
    return pipeWalls({ ...rest, heat: heat.map((each) => wattsPerPipeMetre(each)) });
  };
  const sine = Array.from({ length: 365 }, (_, day) => -5 - 7 * Math.cos((2 * Math.PI * (day + 0.5 - 20)) / 365));

  it('without heat are the undisturbed ground at each', () => {
    const { pipeWalls: courses } = wallsOf(
      pair(1),
      Array.from({ length: 73 }, () => 0),
    );
    const { pipes } = pipeGround(pair(1));
    for (const [index, course] of (courses[0] ?? []).entries())
      for (const [step, wall] of course.entries())
        expect(wall).toBeCloseTo(pipes[index]?.temperatureOn(dayOfYear(1 + 5 * (step + 1))) ?? Number.NaN, 9);
  });

  it('under a sine of heat swing in the mean as the periodic response says, about the steady rise', () => {
    const { layout, pipe, soil } = pair(3);
    const { walls } = wallsOf(pair(3), sine);
    const { amplitude, lag } = periodicResponse({ layout, pipe, soil, period: wave.period });
    const steady = groundResponse({ layout, pipe, soil }).steadyRise ?? Number.NaN;
    const { loop } = pipeGround(pair(3));
    for (const [day, wall] of walls.entries()) {
      const swing = 7 * amplitude * Math.cos((2 * Math.PI * (day + 1 - 20 - days.of(lag))) / 365);
      // Heat that is even through a day lags behind its sine by what a wall rises in half a day, less than 0.02 K here.
      expect(Math.abs(wall - (loop.temperatureOn(dayOfYear(day + 2)) - 5 * steady - swing))).toBeLessThan(0.02);
    }
  });

  it('are linear in the heat, alike in opposite trenches, and coldest where and when it says', () => {
    fc.assert(
      fc.property(fc.array(between(-20, 20), { minLength: 12, maxLength: 12 }), between(-2, 2), (heat, factor) => {
        const [none, once, more] = [0, 1, factor].map((times) =>
          wallsOf(
            pair(3),
            heat.map((each) => times * each),
          ),
        );
        if (none === undefined || once === undefined || more === undefined) throw new Error('three runs');
        for (const [step, wall] of more.walls.entries()) {
          const rest = none.walls[step] ?? Number.NaN;
          expect(wall).toBeCloseTo(rest + factor * ((once.walls[step] ?? Number.NaN) - rest), 8);
        }
        for (const [step, wall] of (once.pipeWalls[0]?.[1] ?? []).entries())
          expect(wall).toBeCloseTo(once.pipeWalls[2]?.[1]?.[step] ?? Number.NaN, 8);
        const all = once.pipeWalls.flat().map((course) => Math.min(...course));
        expect(once.coldestWall).toBe(Math.min(...all));
        const step = Math.round(((once.coldestDay - 1) * 12) / 365) - 1;
        expect(once.pipeWalls[once.coldestTrench]?.[once.coldestPipe]?.[step]).toBe(once.coldestWall);
      }),
      { numRuns: 10 },
    );
  });

  it('are coldest in the inner trenches under steady extraction', () => {
    const { pipeWalls: courses } = wallsOf(
      pair(5),
      Array.from({ length: 12 }, () => -10),
    );
    const mean = (trench: number): number => [...(courses[trench]?.[1] ?? [])].reduce((sum, wall) => sum + wall, 0);
    expect(mean(2)).toBeLessThan(mean(1));
    expect(mean(1)).toBeLessThan(mean(0));
  });

  it('refuses what cannot be', () => {
    const { wallCondition: _, ...rest } = pair(2);
    const heat = Array.from({ length: 12 }, (__, month) => wattsPerPipeMetre(month - 8));
    const example: PipeWallsInput = {
      ...rest,
      surface: { type: 'film', coefficient: wattsPerSquareMetreKelvin(15) },
      selfTerm: 'line',
      secondHarmonic,
      heat,
    };
    const sealed: PipeWallsInput = { ...example, surface: { type: 'adiabatic' } };
    expect(() => pipeWalls(sealed)).toThrow(/surface\.type.*no year repeats/u);
    const more: PipeWallsInput[] = [{ ...example, surface: { type: 'isothermal' }, selfTerm: 'cylinder' }];
    // No valid input has a sealed surface, which is refused above.
    expect(faultsOf(pipeWalls, pipeWallsInputShape, example, { more })).toEqual(['no example has surface.type=adiabatic']);
  });
});
