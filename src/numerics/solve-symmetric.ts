/**
 * Solves a symmetric, positive definite system of equations by Cholesky's factors L · Lᵀ.
 *
 * @param matrix - the rows of the system; the lower triangle is read
 * @param right - the right-hand side
 * @returns the solution
 */
export function solveSymmetric(matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const factor = matrix.map((row, i) => Float64Array.from(row.slice(0, i + 1)));
  const solution = [...right];
  for (const [i, row] of factor.entries()) {
    for (const [j, above] of factor.entries()) {
      if (j > i) break;
      let rest = row[j] ?? 0;
      for (let k = 0; k < j; k += 1) rest -= (row[k] ?? 0) * (above[k] ?? 0);
      row[j] = j < i ? rest / (above[j] ?? 0) : Math.sqrt(rest);
    }
    let rest = solution[i] ?? 0;
    for (let k = 0; k < i; k += 1) rest -= (row[k] ?? 0) * (solution[k] ?? 0);
    solution[i] = rest / (row[i] ?? 0);
  }
  for (const [i, row] of [...factor.entries()].reverse()) {
    const found = (solution[i] ?? 0) / (row[i] ?? 0);
    solution[i] = found;
    for (let k = 0; k < i; k += 1) solution[k] = (solution[k] ?? 0) - (row[k] ?? 0) * found;
  }
  return solution;
}
