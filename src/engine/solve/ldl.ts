/**
 * Factorises a symmetric positive definite matrix of n rows, one number longer than that, as L·D·Lᵀ (Cholesky without roots). Only its upper triangle is
 * read, and overwritten with D·Lᵀ.
 */
export function factorise(matrix: Float64Array, n: number): void {
  const width = n + 1;
  for (let k = 0; k < n; k++) {
    const top = k * width;
    const pivot = matrix[top + k] ?? 1;
    for (let i = k + 1; i < n; i++) {
      const factor = (matrix[top + i] ?? 0) / pivot;
      if (factor === 0) continue;
      const own = i * width;
      for (let j = i; j < n; j++) matrix[own + j] = (matrix[own + j] ?? 0) - factor * (matrix[top + j] ?? 0);
    }
  }
}

/** Solves L·D·Lᵀ x = y with what `factorise` left of n rows; x replaces y. */
export function substitute(matrix: Float64Array, y: Float64Array, n: number): void {
  const width = n + 1;
  for (let k = 0; k < n; k++) {
    const top = k * width;
    const z = (y[k] ?? 0) / (matrix[top + k] ?? 1);
    y[k] = z;
    for (let i = k + 1; i < n; i++) y[i] = (y[i] ?? 0) - (matrix[top + i] ?? 0) * z;
  }
  for (let k = n - 1; k >= 0; k--) {
    const top = k * width;
    let sum = 0;
    for (let i = k + 1; i < n; i++) sum += (matrix[top + i] ?? 0) * (y[i] ?? 0);
    y[k] = (y[k] ?? 0) - sum / (matrix[top + k] ?? 1);
  }
}
