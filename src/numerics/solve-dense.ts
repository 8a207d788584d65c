/**
 * Solves a square system of equations by elimination, the largest number of each column as its pivot.
 *
 * @param matrix - the rows of the system
 * @param right - the right-hand side
 * @returns the solution
 */
export function solveDense(matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const rows = matrix.map((row, index) => Float64Array.of(...row, right[index] ?? NaN));
  const size = rows.length;
  for (let column = 0; column < size; column += 1) {
    const below = rows.slice(column).map((row) => Math.abs(row[column] ?? 0));
    const found = column + below.indexOf(Math.max(...below));
    [rows[column], rows[found]] = [rows[found] ?? new Float64Array(), rows[column] ?? new Float64Array()];
    const pivot = rows[column] ?? new Float64Array();
    for (const row of rows.slice(column + 1)) {
      const factor = (row[column] ?? 0) / (pivot[column] ?? NaN);
      for (let at = column; at <= size; at += 1) row[at] = (row[at] ?? 0) - factor * (pivot[at] ?? 0);
    }
  }
  const solution = new Float64Array(size);
  for (let at = size - 1; at >= 0; at -= 1) {
    const row = rows[at] ?? new Float64Array();
    let rest = row[size] ?? NaN;
    for (let other = at + 1; other < size; other += 1) rest -= (row[other] ?? 0) * (solution[other] ?? 0);
    solution[at] = rest / (row[at] ?? NaN);
  }
  return [...solution];
}
