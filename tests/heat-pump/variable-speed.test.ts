import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type SpeedMixing, speedMixing, type StagedUnit, stagedUnit } from '../../src/heat-pump/index.js';
import { celsius, kilowatts, type Temperature } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { between, flat } from './levels.js';

/** Electricity of a compressor [kW] that needs a·C + b·C^n for a capacity C [kW]: convex, and nothing for nothing. */
const compressor =
  (a: number, b: number, n: number): ((capacity: number) => number) =>
  (capacity) =>
    a * capacity + b * (capacity / 10) ** n;
const ratedAt = (course: (capacity: number) => number, capacities: readonly number[]): StagedUnit =>
  stagedUnit({ levels: capacities.map((each) => flat(each, each / course(each))), between: 'speeds' });
const worst = (rows: readonly SpeedMixing[]): number => Math.max(...rows.map(({ mostOver }) => mostOver));

describe('speedMixing', () => {
  it('holds the true electric input of any convex compressor between its least and the straight line', () => {
    const any = fc.record({
      a: between(0.15, 0.3),
      b: between(0.05, 0.5),
      n: between(1.2, 3),
      steps: fc.array(between(1.2, 2), { minLength: 1, maxLength: 3 }),
      share: between(0, 1),
    });
    fc.assert(
      fc.property(any, ({ a, b, n, steps, share }) => {
        const course = compressor(a, b, n);
        const capacities = steps.reduce<number[]>((all, step) => [...all, (all.at(-1) ?? 2) * step], [2]);
        const unit = ratedAt(course, capacities);
        const rows = speedMixing(unit, celsius(0));
        expect(rows).toHaveLength(steps.length);
        rows.forEach(({ upperLevel, mostOver, leastPower, mixedPower }) => {
          const low = capacities[upperLevel - 1] ?? Number.NaN;
          const capacity = low + share * ((capacities[upperLevel] ?? Number.NaN) - low);
          const mixed = unit.at(celsius(0), kilowatts(capacity)).power / 1000;
          expect(course(capacity)).toBeLessThanOrEqual(mixed * (1 + 1e-9));
          expect(course(capacity)).toBeGreaterThanOrEqual(mixed * (1 - mostOver) * (1 - 1e-9));
          expect(leastPower).toBeLessThanOrEqual(mixedPower);
        });
      }),
    );
  });

  it('shrinks with more rated speeds: 16, 6 and 3 % at most with two, three and five of them, where the truth is 5, 1.5 and 0.5 %', () => {
    const course = compressor(0.2, 0.6, 2);
    const speeds = (count: number): readonly number[] => Array.from({ length: count }, (_, k) => 3 + (7 * k) / (count - 1));
    const trueOver = (count: number): number => {
      const unit = ratedAt(course, speeds(count));
      const loads = Array.from({ length: 71 }, (_, k) => 3 + k / 10);
      return Math.max(...loads.map((load) => 1 - course(load) / (unit.at(celsius(0), kilowatts(load)).power / 1000)));
    };
    const bounds = [2, 3, 5].map((count) => worst(speedMixing(ratedAt(course, speeds(count)), celsius(0))));
    const truths = [2, 3, 5].map(trueOver);
    // Two speeds: the line from nothing through 0.654 kW at 3 kW gives 2.18 kW at 10 kW, where 2.6 kW are rated.
    expect(bounds[0]).toBeCloseTo(1 - 2.18 / 2.6, 9);
    expect(bounds.map((each) => Math.round(100 * each))).toEqual([16, 6, 3]);
    expect(truths.map((each) => Math.round(200 * each) / 2)).toEqual([5, 1.5, 0.5]);
  });

  it('has no row for one level, nor for speeds that are themselves not convex', () => {
    expect(speedMixing(stagedUnit({ levels: [flat(6, 4)], between: 'speeds' }), celsius(0))).toEqual([]);
    expect(speedMixing(stagedUnit({ levels: [flat(3, 3), flat(6, 4)], between: 'speeds' }), celsius(0))).toEqual([]);
  });

  it('refuses bad input by name', () => {
    const unit = ratedAt(compressor(0.2, 0.6, 2), [3, 6, 10]);
    refuses<{ readonly enteringFluid: Temperature; readonly supplyTemperature?: Temperature }>(
      ({ enteringFluid, supplyTemperature }) => speedMixing(unit, enteringFluid, supplyTemperature),
      { enteringFluid: 'temperature', supplyTemperature: { optional: 'temperature' } },
      { enteringFluid: celsius(2), supplyTemperature: celsius(40) },
    );
  });
});
