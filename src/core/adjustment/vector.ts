/** Euclidean length of the entries of `vector` from `from` on. */
export function lengthOf(vector: ArrayLike<number>, from = 0): number {
  let squares = 0;
  for (let i = from; i < vector.length; i += 1) squares += vector[i]! * vector[i]!;
  return Math.sqrt(squares);
}
