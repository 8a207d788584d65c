import fc from 'fast-check';
import type { RatingPoint } from '../../src/heat-pump/index.js';
import { celsius, electricKilowatts, kilowatts, ratio } from '../../src/units/index.js';

/** The invented unit E-1 in heating at rated flow; no product. */
export const inventedHeating: readonly RatingPoint[] = [-5, 0, 5, 10, 15, 20, 25].map((t) => ({
  enteringFluid: celsius(t),
  capacity: kilowatts(8 + 0.22 * t + 0.0006 * t * t),
  power: electricKilowatts(2.35 + 0.013 * t + 0.0001 * t * t),
}));

/** The invented unit E-1 in cooling at rated flow; no product. */
export const inventedCooling: readonly RatingPoint[] = [5, 10, 15, 20, 25, 30, 35, 40].map((t) => ({
  enteringFluid: celsius(t),
  capacity: kilowatts(11.6 - 0.06 * t - 0.0004 * t * t),
  power: electricKilowatts(1.3 + 0.027 * t + 0.0006 * t * t),
}));

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** Units of any size whose capacity rises by up to 5 % a kelvin and whose COP wanders by up to 3 %, at uneven points in any order. */
export const anyUnit: fc.Arbitrary<readonly RatingPoint[]> = fc
  .record({
    first: between(1, 1000),
    cop: between(2, 7),
    points: fc.array(fc.record({ step: between(1, 8), rise: between(0.001, 0.05), drift: between(-0.03, 0.03) }), { minLength: 2, maxLength: 8 }),
  })
  .map(({ first, cop, points }) => {
    let state = { enteringFluid: -12, capacity: first, cop };
    return points.map(({ step, rise, drift }) => {
      state = {
        enteringFluid: state.enteringFluid + step,
        capacity: state.capacity * (1 + rise * step),
        cop: Math.min(7, Math.max(2, state.cop * (1 + drift * step))),
      };
      return { enteringFluid: celsius(state.enteringFluid), capacity: kilowatts(state.capacity), cop: ratio(state.cop) };
    });
  })
  .chain((points) => fc.shuffledSubarray(points, { minLength: points.length }));
