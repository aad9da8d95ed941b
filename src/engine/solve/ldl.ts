/**
 * Factorises a symmetric positive definite matrix of n rows as L·D·Lᵀ (Cholesky without roots). Only its upper triangle is
 * read, and overwritten with D·Lᵀ.
 */
export function factorise(matrix: Float64Array, n: number): void {
  for (let k = 0; k < n; k++) {
    const pivot = matrix[k * n + k] ?? 1;
    for (let i = k + 1; i < n; i++) {
      const factor = (matrix[k * n + i] ?? 0) / pivot;
      if (factor === 0) continue;
      for (let j = i; j < n; j++)
        matrix[i * n + j] = (matrix[i * n + j] ?? 0) - factor * (matrix[k * n + j] ?? 0);
    }
  }
}

/** Solves L·D·Lᵀ x = y with what `factorise` left of n rows; x replaces y. */
export function substitute(matrix: Float64Array, y: Float64Array, n: number): void {
  for (let k = 0; k < n; k++) {
    const z = (y[k] ?? 0) / (matrix[k * n + k] ?? 1);
    y[k] = z;
    for (let i = k + 1; i < n; i++) y[i] = (y[i] ?? 0) - (matrix[k * n + i] ?? 0) * z;
  }
  for (let k = n - 1; k >= 0; k--) {
    let sum = 0;
    for (let i = k + 1; i < n; i++) sum += (matrix[k * n + i] ?? 0) * (y[i] ?? 0);
    y[k] = (y[k] ?? 0) - sum / (matrix[k * n + k] ?? 1);
  }
}
