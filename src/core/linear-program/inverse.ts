/**
 * The inverse of a square matrix by Gauss and Jordan with row interchanges, by rows: entry (i, j)
 * is at i·size + j.
 *
 * @throws RangeError where the matrix is singular.
 */
export function inverseOf(matrix: ArrayLike<number>, size: number): Float64Array {
  const width = 2 * size;
  const work = new Float64Array(size * width);
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j < size; j += 1) work[i * width + j] = matrix[i * size + j]!;
    work[i * width + size + i] = 1;
  }
  for (let k = 0; k < size; k += 1) {
    swapRows(work, width, k, largestBelow(work, width, size, k));
    const pivot = work[k * width + k]!;
    if (pivot === 0) throw new RangeError('The matrix is singular');
    for (let at = k * width + k; at < (k + 1) * width; at += 1) work[at] = work[at]! / pivot;
    for (let i = 0; i < size; i += 1) {
      if (i !== k) clearEntry(work, width, i, k);
    }
  }
  const inverse = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    inverse.set(work.subarray(i * width + size, (i + 1) * width), i * size);
  }
  return inverse;
}

function largestBelow(work: Float64Array, width: number, size: number, k: number): number {
  let largest = k;
  for (let i = k + 1; i < size; i += 1) {
    if (Math.abs(work[i * width + k]!) > Math.abs(work[largest * width + k]!)) largest = i;
  }
  return largest;
}

/** Takes row k off row i so that the entry (i, k) becomes 0. */
function clearEntry(work: Float64Array, width: number, i: number, k: number): void {
  const factor = work[i * width + k]!;
  if (factor === 0) return;
  for (let j = k; j < width; j += 1) {
    work[i * width + j] = work[i * width + j]! - factor * work[k * width + j]!;
  }
}

function swapRows(work: Float64Array, width: number, a: number, b: number): void {
  if (a === b) return;
  const held = work.slice(a * width, (a + 1) * width);
  work.copyWithin(a * width, b * width, (b + 1) * width);
  work.set(held, b * width);
}
