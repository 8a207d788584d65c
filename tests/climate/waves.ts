import fc from 'fast-check';
import type { AnnualWave } from '../../src/states/index.js';
import {
  celsius,
  dayOfYear,
  days,
  type Diffusivity,
  kelvinDifference,
  type Length,
  metres,
  squareMetresPerDay,
  squareMetresPerSecond,
} from '../../src/units/index.js';

/** A temperate surface in the northern hemisphere. */
export const temperate: AnnualWave = {
  of: 'ground surface',
  mean: celsius(10),
  amplitude: kelvinDifference(12),
  coldestDay: dayOfYear(36),
  period: days(365),
};

/** A damp loam. */
export const loam: Diffusivity = squareMetresPerDay(0.05);

/** Any wave of any place, with a year of any of the lengths in use. */
export const anyWave: fc.Arbitrary<AnnualWave> = fc.record({
  of: fc.constant('ground surface' as const),
  mean: fc.double({ min: -10, max: 35, noNaN: true }).map((mean) => celsius(mean)),
  amplitude: fc.double({ min: 0, max: 30, noNaN: true }).map((amplitude) => kelvinDifference(amplitude)),
  coldestDay: fc.double({ min: 1, max: 365.9, noNaN: true }).map((day) => dayOfYear(day)),
  period: fc.constantFrom(365, 365.25, 366).map((period) => days(period)),
});

/** The diffusivity of any ground. */
export const anyDiffusivity: fc.Arbitrary<Diffusivity> = fc
  .double({ min: 1e-7, max: 3e-6, noNaN: true })
  .map((value) => squareMetresPerSecond(value));

/** Any depth of a loop and well below. */
export const anyDepth: fc.Arbitrary<Length> = fc.double({ min: 0, max: 20, noNaN: true }).map((depth) => metres(depth));

/** Any moment of forty years. */
export const anyDay: fc.Arbitrary<number> = fc.double({ min: -3650, max: 11_000, noNaN: true });
