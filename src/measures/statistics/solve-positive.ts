/**
 * Adds to the diagonal of a matrix so that it can be solved where some effect is not determined.
 *
 * @param matrix row by row; changed in place
 * @returns the same matrix
 * @example addRidge(Float64Array.of(0, 0, 0, 0), 2, 1) // => 1, 0, 0, 1
 */
export function addRidge(matrix: Float64Array, size: number, ridge: number): Float64Array {
  for (let i = 0; i < size; i += 1) matrix[i * size + i] = (matrix[i * size + i] as number) + ridge;
  return matrix;
}

/**
 * Solves a small positive definite system in place by Cholesky's decomposition: hundreds of thousands of them, where
 * making objects of matrices would cost more than solving.
 *
 * @param matrix row by row, of which the lower half is read; destroyed
 * @returns null where the matrix is not positive definite
 * @example solvePositive(Float64Array.of(4, 0, 2, 3), Float64Array.of(2, 5), 2) // => [-0.5, 2]
 */
export function solvePositive(matrix: Float64Array, right: Float64Array, size: number): Float64Array | null {
  const x = right.slice();
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let sum = matrix[i * size + j] as number;
      for (let k = 0; k < j; k += 1) sum -= (matrix[i * size + k] as number) * (matrix[j * size + k] as number);
      if (i > j) matrix[i * size + j] = sum / (matrix[j * size + j] as number);
      else if (sum > 0) matrix[i * size + i] = Math.sqrt(sum);
      else return null;
    }
    let value = x[i] as number;
    for (let k = 0; k < i; k += 1) value -= (matrix[i * size + k] as number) * (x[k] as number);
    x[i] = value / (matrix[i * size + i] as number);
  }
  for (let i = size - 1; i >= 0; i -= 1) {
    let value = x[i] as number;
    for (let k = i + 1; k < size; k += 1) value -= (matrix[k * size + i] as number) * (x[k] as number);
    x[i] = value / (matrix[i * size + i] as number);
  }
  return x;
}
