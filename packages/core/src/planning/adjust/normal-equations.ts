/**
 * Solves (JᵀJ + I) x = Jᵀr: the step of least squares with a prior of one standard deviation on each unknown.
 *
 * Shapes   rows: evidence × unknowns, rest: evidence → unknowns
 * Error    Gaussian elimination; the matrix is symmetric and its eigenvalues are at least 1, so it needs no pivoting
 */
export function leastSquaresStep(
  rows: readonly Float64Array[],
  rest: Float64Array,
  prior: Float64Array,
): Float64Array {
  const n = prior.length;
  const matrix = Array.from({ length: n }, (_, i) => {
    const line = new Float64Array(n + 1);
    line[i] = 1;
    line[n] = prior[i] ?? NaN;
    return line;
  });
  rows.forEach((row, evidence) => {
    for (let i = 0; i < n; i++) {
      const line = matrix[i];
      const share = row[i] ?? NaN;
      if (line === undefined) continue;
      for (let j = 0; j < n; j++) line[j] = (line[j] ?? NaN) + share * (row[j] ?? NaN);
      line[n] = (line[n] ?? NaN) + share * (rest[evidence] ?? NaN);
    }
  });
  return eliminated(matrix, n);
}

function eliminated(matrix: readonly Float64Array[], n: number): Float64Array {
  for (const [k, pivot] of matrix.entries()) {
    for (const line of matrix.slice(k + 1)) {
      const factor = (line[k] ?? NaN) / (pivot[k] ?? NaN);
      for (let j = k; j <= n; j++) line[j] = (line[j] ?? NaN) - factor * (pivot[j] ?? NaN);
    }
  }
  const x = new Float64Array(n);
  for (let i = n - 1; i >= 0; i--) {
    const line = matrix[i];
    if (line === undefined) continue;
    let sum = line[n] ?? NaN;
    for (let j = i + 1; j < n; j++) sum -= (line[j] ?? NaN) * (x[j] ?? NaN);
    x[i] = sum / (line[i] ?? NaN);
  }
  return x;
}
