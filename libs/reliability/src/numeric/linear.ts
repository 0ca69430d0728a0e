/** Inverse of a small symmetric positive definite matrix (rows), by Gauss–Jordan; null when it is singular. */
export function invert(matrix: readonly (readonly number[])[]): number[][] | null {
  const n = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...Array.from({ length: n }, (_, j) => (i === j ? 1 : 0))]);
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let i = column + 1; i < n; i++) if (Math.abs(rows[i]![column]!) > Math.abs(rows[pivot]![column]!)) pivot = i;
    const value = rows[pivot]![column]!;
    if (!(Math.abs(value) > 1e-300)) return null;
    [rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!];
    rows[column] = rows[column]!.map((each) => each / value);
    for (let i = 0; i < n; i++) {
      if (i === column) continue;
      const factor = rows[i]![column]!;
      if (factor !== 0) rows[i] = rows[i]!.map((each, j) => each - factor * rows[column]![j]!);
    }
  }
  return rows.map((row) => row.slice(n));
}
