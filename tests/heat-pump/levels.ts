import fc from 'fast-check';
import { type PerformanceMap, performanceMap, type StagedUnit, stagedUnit } from '../../src/heat-pump/index.js';
import { celsius, kilowatts, ratio } from '../../src/units/index.js';
import { anyUnit } from './units.js';

export const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** An invented level with one capacity and one COP at all entering temperatures. */
export const flat = (capacity: number, cop: number, mode: 'heating' | 'cooling' = 'heating'): PerformanceMap =>
  performanceMap({
    mode,
    points: [-5, 25].map((entering) => ({ enteringFluid: celsius(entering), capacity: kilowatts(capacity), cop: ratio(cop) })),
  });

/** One to five levels of any unit, each with more output than the one below. */
export const anyLevels: fc.Arbitrary<readonly PerformanceMap[]> = fc
  .record({
    mode: fc.constantFrom('heating' as const, 'cooling' as const),
    points: anyUnit,
    steps: fc.array(fc.record({ more: between(1.05, 3), cop: between(0.7, 1.1) }), { minLength: 1, maxLength: 5 }),
  })
  .map(({ mode, points, steps }) => {
    let scale = 0.2;
    return steps.map(({ more, cop }) => {
      scale *= more;
      return performanceMap({
        mode,
        points: points.map((point) => ({
          enteringFluid: point.enteringFluid,
          capacity: kilowatts(scale * kilowatts.of(point.capacity)),
          cop: ratio((point.cop ?? 3) * cop),
        })),
      });
    });
  });

/** Any such unit, which switches, modulates or starts with a loss. */
export const anyStaged: fc.Arbitrary<StagedUnit> = fc
  .record({ levels: anyLevels, between: fc.constantFrom('stages' as const, 'speeds' as const), degradation: fc.option(between(0, 0.5)) })
  .map(({ levels, between: kind, degradation }) =>
    stagedUnit({
      levels,
      between: kind,
      ...(degradation === null ? {} : { cyclingLoss: (loadRatio) => ratio(1 - degradation * (1 - loadRatio)) }),
    }),
  );
