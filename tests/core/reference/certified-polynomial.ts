/** A polynomial fitted by least squares, with the values that its publisher certifies. */
export interface CertifiedPolynomial {
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** From the constant term up. */
  readonly parameters: readonly number[];
  /** Of the parameters, scaled by the residual standard deviation. */
  readonly standardDeviations: readonly number[];
  readonly residualStandardDeviation: number;
}
