/**
 * The inverse of a small square matrix by Gauss and Jordan with row interchanges. Entry (i, j) is
 * at i·size + j, unlike the large matrices of the adjustment: the exchange reads rows.
 *
 * @throws RangeError where the matrix is singular.
 */
export function invert(matrix: readonly number[], size: number): number[] {
  const work = matrix.slice();
  const inverse = identity(size);
  for (let k = 0; k < size; k += 1) {
    const pivot = largestBelow(work, size, k);
    if (work[pivot * size + k] === 0) throw new RangeError('The matrix is singular');
    swapRows(work, size, k, pivot);
    swapRows(inverse, size, k, pivot);
    const divisor = work[k * size + k]!;
    for (let j = k * size; j < (k + 1) * size; j += 1) {
      work[j] = work[j]! / divisor;
      inverse[j] = inverse[j]! / divisor;
    }
    for (let i = 0; i < size; i += 1) {
      if (i !== k) clearRow(work, inverse, size, i, k);
    }
  }
  return inverse;
}

/** The unit matrix. */
export function identity(size: number): number[] {
  const matrix: number[] = [];
  for (let at = 0; at < size * size; at += 1) matrix.push(at % (size + 1) === 0 ? 1 : 0);
  return matrix;
}

function largestBelow(work: readonly number[], size: number, k: number): number {
  let largest = k;
  for (let i = k + 1; i < size; i += 1) {
    if (Math.abs(work[i * size + k]!) > Math.abs(work[largest * size + k]!)) largest = i;
  }
  return largest;
}

/** Takes row k off row i, of both, so that the entry (i, k) becomes 0. */
function clearRow(work: number[], inverse: number[], size: number, i: number, k: number): void {
  const factor = work[i * size + k]!;
  if (factor === 0) return;
  for (let j = 0; j < size; j += 1) {
    work[i * size + j] = work[i * size + j]! - factor * work[k * size + j]!;
    inverse[i * size + j] = inverse[i * size + j]! - factor * inverse[k * size + j]!;
  }
}

function swapRows(matrix: number[], size: number, a: number, b: number): void {
  if (a === b) return;
  for (let j = 0; j < size; j += 1) {
    const held = matrix[a * size + j]!;
    matrix[a * size + j] = matrix[b * size + j]!;
    matrix[b * size + j] = held;
  }
}
