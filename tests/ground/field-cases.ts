import fc from 'fast-check';
import type { Layout } from '../../src/ground/index.js';
import { layoutOf } from './support.js';

/** Trenches of one to three pipes well apart, in soils of every kind, at a time from a minute to a hundred years. */
export interface FieldCase {
  readonly pipes: readonly (readonly [x: number, depth: number])[];
  readonly trenches: number;
  readonly spacing: number;
  readonly radius: number;
  readonly conductivity: number;
  readonly diffusivity: number;
  readonly time: number;
}

/** Real numbers of a range. */
export const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** {@link FieldCase}s. */
export const fieldCases: fc.Arbitrary<FieldCase> = fc.record({
  pipes: fc
    .tuple(between(0.6, 3), between(0.3, 1), between(0.3, 1), fc.integer({ min: 1, max: 3 }))
    .map(([top, across, down, count]) => [[0, top] as const, [across, top + down] as const, [across / 3, top + 2 * down] as const].slice(0, count)),
  trenches: fc.integer({ min: 1, max: 5 }),
  spacing: between(1.5, 8),
  radius: between(0.01, 0.03),
  conductivity: between(0.3, 3),
  diffusivity: between(2e-7, 1.5e-6),
  time: between(Math.log(60), Math.log(3e9)).map(Math.exp),
});

/** The layout of a case. */
export const layoutOfCase = ({ pipes, trenches, spacing }: FieldCase): Layout => layoutOf(pipes, trenches, spacing);
