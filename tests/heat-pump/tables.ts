import fc from 'fast-check';
import { InputError } from '../../src/errors/index.js';
import { type ConditionRatingPoint, conditionMap } from '../../src/heat-pump/index.js';
import { celsius, electricWatts, watts } from '../../src/units/index.js';

export const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** An invented unit that makes water: bilinear in entering fluid and supply; no product. */
export const bilinear = (entering: number, supply: number): { readonly capacity: number; readonly power: number } => ({
  capacity: 8000 + 220 * entering - 25 * (supply - 35) - 1.5 * entering * (supply - 35),
  power: 1780 + 6 * entering + 45 * (supply - 35) + 0.3 * entering * (supply - 35),
});

/** A rating point of a form. */
export const ratedBy = (form: typeof bilinear, entering: number, supply: number): ConditionRatingPoint => {
  const { capacity, power } = form(entering, supply);
  return {
    enteringFluid: celsius(entering),
    supplyTemperature: celsius(supply),
    capacity: watts(capacity),
    power: electricWatts(power),
  };
};

/** A full grid of a form. */
export const grid = (form: typeof bilinear, entering: readonly number[], supplies: readonly number[]): readonly ConditionRatingPoint[] =>
  supplies.flatMap((supply) => entering.map((each) => ratedBy(form, each, supply)));

/**
 * Tables of any unit, ragged: each supply temperature with entering fluids of its own, the corner of cold fluid and warm water missing. Capacity rises with the fluid and falls with
 * the supply, power rises with the supply; each at rates that wander from point to point by the share given.
 */
export const anyTable = (wander: number): fc.Arbitrary<readonly ConditionRatingPoint[]> =>
  fc
    .record({
      size: between(1, 500),
      gaps: fc.array(between(5, 10), { minLength: 1, maxLength: 3 }),
      steps: fc.array(between(3, 6), { minLength: 3, maxLength: 6 }),
      rates: fc.array(between(1 - wander, 1 + wander), { minLength: 60, maxLength: 60 }),
      cut: fc.integer({ min: 0, max: 1 }),
    })
    .map(({ size, gaps, steps, rates, cut }) => {
      const rate = (row: number, column: number, kind: number): number => rates[(17 * row + 7 * column + 31 * kind) % 60] ?? 1;
      const entering = [-8, ...steps].map((_, k, all) => all.slice(1, k + 1).reduce((sum, step) => sum + step, -8));
      const supplies = [35, ...gaps].map((_, k, all) => all.slice(1, k + 1).reduce((sum, gap) => sum + gap, 35));
      return supplies.flatMap((supply, row) => {
        // Capacity of the first column falls with the supply; along a row each step adds about 2.5 % a kelvin, so like in all rows that they never cross.
        let capacity = 7000 * (1 - 0.012 * (supply - 35));
        return entering.flatMap((place, column) => {
          if (column > 0) capacity += 170 * (1 - 0.012 * (supply - 35)) * (place - (entering[column - 1] ?? place)) * rate(row, column, 0);
          const power = 1600 + 45 * (supply - 35) + 60 * rate(row, column, 1);
          const missing = column < Math.min(row * cut, entering.length - 3);
          return missing ? [] : [ratedBy(() => ({ capacity: size * capacity, power: size * power }), place, supply)];
        });
      });
    })
    .filter(believable);

/** Whether a table is one that a map is made of; wild ones have places where the unit would have nothing to give. */
function believable(points: readonly ConditionRatingPoint[]): boolean {
  try {
    conditionMap({ mode: 'heating', points });
    return true;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}

/** The points of one supply temperature. */
export const rowOf = (points: readonly ConditionRatingPoint[], supply: number): readonly ConditionRatingPoint[] =>
  points.filter(({ supplyTemperature }) => supplyTemperature === supply);

/** The supply temperatures of a table, rising. */
export const suppliesOf = (points: readonly ConditionRatingPoint[]): readonly number[] =>
  [...new Set(points.map(({ supplyTemperature = Number.NaN }) => supplyTemperature))].sort((a, b) => a - b);
