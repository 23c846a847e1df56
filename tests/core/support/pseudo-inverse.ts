import { Matrix, pseudoInverse, SVD } from 'ml-matrix';
import type { System } from './systems';

/** ml-matrix takes singular values below this for 0. Those of small whole numbers are far from it, or 0. */
const THRESHOLD = 1e-9;

/** The same problem solved by ml-matrix: A⁺b of the whitened system, and what goes with it. */
export function solvedByPseudoInverse({ rows, columns, matrix, observations, standards }: System) {
  const whitened = Matrix.zeros(rows, columns);
  for (let i = 0; i < rows; i += 1) {
    for (let j = 0; j < columns; j += 1) whitened.set(i, j, matrix[i + j * rows]! / standards[i]!);
  }
  const target = Matrix.columnVector(observations.map((value, i) => value / standards[i]!));
  const inverse = pseudoInverse(whitened, THRESHOLD);
  const solution = inverse.mmul(target);
  const gains = (weights: ArrayLike<number>) =>
    Matrix.rowVector(Array.from(weights)).mmul(inverse).to1DArray();
  const svd = new SVD(whitened, { autoTranspose: true });
  return {
    rank: svd.diagonal.filter((value) => value > THRESHOLD).length,
    value: (weights: ArrayLike<number>) =>
      Array.from(weights).reduce((total, weight, j) => total + weight * solution.get(j, 0), 0),
    standard: (weights: ArrayLike<number>) => Math.hypot(...gains(weights)),
    /** The part of `weights` that no observation sees: weights·(I - A⁺A). */
    unseen: (weights: ArrayLike<number>) => {
      const row = Matrix.rowVector(Array.from(weights));
      return Matrix.sub(row, row.mmul(inverse).mmul(whitened)).to1DArray();
    },
  };
}
