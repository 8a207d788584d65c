import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveSymmetric } from '../../src/numerics/index.js';

describe('symmetric system', () => {
  it('is satisfied by its solution', () => {
    const size = 6;
    const row = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: size, maxLength: size });
    fc.assert(
      fc.property(fc.array(row, { minLength: size, maxLength: size }), row, (half, right) => {
        const matrix = half.map((a, i) => half.map((b, j) => a.reduce((sum, x, k) => sum + x * (b[k] ?? 0), i === j ? 1 : 0)));
        const solution = solveSymmetric(matrix, right);
        for (const [i, line] of matrix.entries()) {
          const left = line.reduce((sum, x, k) => sum + x * (solution[k] ?? Number.NaN), 0);
          expect(left).toBeCloseTo(right[i] ?? Number.NaN, 10);
        }
      }),
    );
  });
});
