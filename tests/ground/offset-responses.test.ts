import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupPairs, meanRise, pipeRises, type PipePlaces } from '../../src/ground/pairs.js';
import type { StepKernel } from '../../src/ground/step-kernel.js';
import { groundResponse, periodicResponse, unequalTrenches } from '../../src/ground/index.js';
import { days, diameterMetres, metres, seconds } from '../../src/units/index.js';
import { between, fieldCases, layoutOfCase } from './field-cases.js';
import { layoutOf, soilOf } from './support.js';

/** A kernel that counts how often it is asked. */
const counting = (): { readonly kernel: StepKernel; readonly count: () => number } => {
  let calls = 0;
  return {
    kernel: { own: (image) => 1 / image + calls++ * 0, other: (axis, image) => 1 / axis - 1 / image + calls++ * 0 },
    count: () => calls,
  };
};
const placesOf = (trenches: number): PipePlaces => ({
  pipes: [
    { x: 0, depth: 1.2 },
    { x: 0.13, depth: 1.7 },
    { x: -0.21, depth: 1.9 },
  ],
  trenches,
  trenchSpacing: 2.37,
  addedDepth: 0,
});

describe('N equal trenches', () => {
  it.each([1, 2, 10, 100, 500])('of three pipes ask for no more than nine distances a trench: %i', (trenches) => {
    const groups = groupPairs(placesOf(trenches));
    expect(groups.length).toBeLessThanOrEqual(9 * trenches);
    const mean = counting();
    meanRise(groups, mean.kernel);
    expect(mean.count()).toBe(groups.length);
    // One by one the pipes look to both sides.
    const each = counting();
    pipeRises(placesOf(trenches), each.kernel);
    expect(each.count()).toBeLessThanOrEqual(2 * 9 * trenches);
  });

  it('come from the same distances as N + 1 but for the last trench, so that one more trench costs one offset', () => {
    const key = ({ axis, image, across }: { axis: number; image: number; across: number }): string => [axis, image, across].join(' ');
    const [few, more] = [new Set(groupPairs(placesOf(40)).map(key)), groupPairs(placesOf(41)).map(key)];
    expect(more.filter((each) => !few.has(each)).length).toBeLessThanOrEqual(9);
    expect(more.length - few.size).toBeLessThanOrEqual(9);
  });

  it('weigh pairs as all pairs of pipes do, counted one by one', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), (trenches) => {
        const groups = groupPairs(placesOf(trenches));
        const total = groups.reduce((sum, { weight }) => sum + weight, 0);
        expect(total).toBeCloseTo(3 * trenches, 9);
        expect(groups.filter(({ axis }) => axis === 0).reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('periodic response of every layout', () => {
  const PERIOD = days(365);
  const of = (
    layout: ReturnType<typeof layoutOf>,
    field: { radius: number; conductivity: number; diffusivity: number },
  ): readonly [number, number] => {
    const pipe = { outsideDiameter: diameterMetres(2 * field.radius) };
    const { amplitude, lag } = periodicResponse({ layout, pipe, soil: soilOf(field.conductivity, field.diffusivity), period: PERIOD });
    const angle = (2 * Math.PI * lag) / PERIOD;
    return [amplitude * Math.cos(angle), amplitude * Math.sin(angle)];
  };
  const near = (a: readonly number[], b: readonly number[], tolerance: number): void => {
    for (const [index, each] of a.entries()) expect(Math.abs(each - (b[index] ?? Number.NaN))).toBeLessThan(tolerance);
  };

  it('is the same for equal trenches listed one by one as unlike ones, and for the field mirrored', () => {
    fc.assert(
      fc.property(fieldCases, (field) => {
        const pipes = field.pipes.map(([x, depth]) => ({ x: metres(x), depth: metres(depth) }));
        const trenchGroup = Array.from({ length: field.trenches }, (_, index) => ({ across: metres(index * field.spacing), pipes }));
        const whole = of(layoutOfCase(field), field);
        near(of(unequalTrenches({ trenchGroup, trenches: 1, trenchSpacing: metres(200) }), field), whole, 1e-9);
        near(
          of(
            layoutOf(
              field.pipes.map(([x, depth]) => [-x, depth] as const),
              field.trenches,
              field.spacing,
            ),
            field,
          ),
          whole,
          1e-9,
        );
      }),
      { numRuns: 30 },
    );
  });

  it('of pipes far apart is the mean of each alone, swings less than the rise in the end, and comes to one trench as the spacing grows', () => {
    fc.assert(
      fc.property(fieldCases, (field) => {
        const [first, ...rest] = field.pipes;
        if (first === undefined) throw new Error('a pipe');
        const far = [first, ...rest.map(([, depth], index) => [index === 0 ? 45 : -45, depth] as const)];
        const alone = far.map(([, depth]) => of(layoutOf([[0, depth]]), field));
        const mean = [0, 1].map((part) => alone.reduce((sum, each) => sum + (each[part] ?? Number.NaN), 0) / alone.length);
        near(of(layoutOf(far), field), mean, 1e-6 / field.conductivity);
        near(of(layoutOf(field.pipes, field.trenches, 200), field), of(layoutOf(field.pipes), field), 1e-6 / field.conductivity);
        const response = groundResponse({
          layout: layoutOfCase(field),
          pipe: { outsideDiameter: diameterMetres(2 * field.radius) },
          soil: soilOf(field.conductivity, field.diffusivity),
        });
        expect(Math.hypot(...of(layoutOfCase(field), field))).toBeLessThanOrEqual((response.steadyRise ?? 0) * (1 + 1e-12));
        expect(response.riseAfter(seconds(1e12))).toBeLessThanOrEqual((response.steadyRise ?? 0) * (1 + 1e-12));
      }),
      { numRuns: 30 },
    );
  });

  it('is unchanged when lengths are scaled and the period by the square, and goes with 1/conductivity', () => {
    fc.assert(
      fc.property(fieldCases, between(0.5, 2), (field, c) => {
        const scaled = { ...field, pipes: field.pipes.map(([x, depth]) => [c * x, c * depth] as const), spacing: c * field.spacing };
        const run = (layout: ReturnType<typeof layoutOf>, radius: number, conductivity: number, period: number): number =>
          periodicResponse({
            layout,
            pipe: { outsideDiameter: diameterMetres(2 * radius) },
            soil: soilOf(conductivity, field.diffusivity),
            period: seconds(period),
          }).amplitude;
        const base = run(layoutOfCase(field), field.radius, field.conductivity, PERIOD);
        expect(run(layoutOfCase(scaled), c * field.radius, field.conductivity, c * c * PERIOD) / base).toBeCloseTo(1, 8);
        expect((c * run(layoutOfCase(field), field.radius, c * field.conductivity, PERIOD)) / base).toBeCloseTo(1, 10);
      }),
      { numRuns: 30 },
    );
  });
});
