/**
 * Solves symmetric equations, given as the upper triangle of their matrix with the right-hand side at the end of each row, in whole numbers without a single fraction: every division comes out even (E. H. Bareiss,
 * "Sylvester's identity and multistep integer-preserving Gaussian elimination", Math. Comp. 22, 1968; from memory). A row that an
 * elimination leaves alone keeps its old scale until it is needed. Returns the unknowns times the determinant, then the determinant.
 */
export function solveWhole(rows: bigint[][]): bigint[] {
  const n = rows.length;
  const scales = new Array<bigint>(n).fill(1n);
  let scale = 1n;
  const upToDate = (i: number): bigint[] => {
    const row = rows[i] ?? [];
    const old = scales[i] ?? 1n;
    if (old !== scale) {
      for (let j = 0; j < row.length; j++) if (row[j]) row[j] = ((row[j] ?? 0n) * scale) / old;
      scales[i] = scale;
    }
    return row;
  };
  for (let k = 0; k < n; k++) {
    const pivotRow = upToDate(k);
    const pivot = pivotRow[0] ?? 1n;
    for (let i = 1; i < n - k; i++) {
      const factor = pivotRow[i];
      if (!factor) continue;
      const row = upToDate(k + i);
      for (let j = 0; j < row.length; j++) {
        const [entry = 0n, above = 0n] = [row[j], pivotRow[i + j]];
        if (entry || above) row[j] = (entry * pivot - factor * above) / scale;
      }
      scales[k + i] = pivot;
    }
    scale = pivot;
  }
  const unknowns = new Array<bigint>(n).fill(0n);
  for (let k = n - 1; k >= 0; k--) {
    const row = rows[k] ?? [];
    let sum = (row[n - k] ?? 0n) * scale;
    for (let i = 1; i < n - k; i++) if (row[i]) sum -= (row[i] ?? 0n) * (unknowns[k + i] ?? 0n);
    unknowns[k] = sum / (row[0] ?? 1n);
  }
  return [...unknowns, scale];
}
