import type { FormGroup } from './form-groups';

/** Form as it is likely to be, its readings' noise taken account of, in µm. */
export interface LikelyForm {
  readonly residuals: Float64Array;
  /** Standard uncertainty of each, by itself. */
  readonly standard: number;
}

/**
 * Residuals are form and noise together. Their spread beyond the noise tells how much of them is
 * form: with s² = Σr²/(n - fitted) and the noise σ, the part k = max(0, 1 - σ²/s²). Form is then
 * likely k·r, within σ·√k: the estimator of James and Stein in the empirical Bayes form of Efron and
 * Morris (Journal of the American Statistical Association 68, 1973; from memory). Taken as they
 * are, residuals would count their noise as form, and with a reading more the zone would only grow.
 */
export function likelyForm({ residuals, standard, fitted }: FormGroup): LikelyForm {
  const spare = residuals.length - fitted;
  const squares = residuals.reduce((total, residual) => total + residual * residual, 0);
  const part = squares > 0 ? Math.max(0, 1 - (standard * standard * spare) / squares) : 0;
  return {
    residuals: residuals.map((residual) => part * residual),
    standard: standard * Math.sqrt(part),
  };
}
