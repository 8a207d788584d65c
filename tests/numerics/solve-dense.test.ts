import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveDense } from '../../src/numerics/solve-dense.js';

describe('solveDense', () => {
  it('finds what was multiplied, whatever stands on the diagonal', () => {
    const number = fc.double({ min: -1, max: 1, noNaN: true });
    const system = fc.integer({ min: 1, max: 8 }).chain((size) =>
      fc.record({
        matrix: fc.array(fc.array(number, { minLength: size, maxLength: size }), { minLength: size, maxLength: size }),
        wanted: fc.array(number, { minLength: size, maxLength: size }),
      }),
    );
    fc.assert(
      fc.property(system, ({ matrix, wanted }) => {
        // Rows in the reverse order with a great number each: an elimination without pivots would divide by what is small.
        const rows = matrix.map((row, index) => row.map((each, column) => (column === row.length - 1 - index ? each + 20 : each)));
        const right = rows.map((row) => row.reduce((sum, each, column) => sum + each * (wanted[column] ?? NaN), 0));
        for (const [index, found] of solveDense(rows, right).entries()) expect(found).toBeCloseTo(wanted[index] ?? NaN, 10);
      }),
    );
  });

  it('swaps rows where a zero stands on the diagonal', () => {
    expect(
      solveDense(
        [
          [0, 2],
          [4, 0],
        ],
        [6, 8],
      ),
    ).toEqual([2, 3]);
  });
});
