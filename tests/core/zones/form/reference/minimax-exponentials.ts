/**
 * The fit y = a·exp(t) + b·exp(-t) + c with the least greatest error: the example of a numerical
 * library's manual, in the line of Barrodale and Phillips, Algorithm 495, ACM TOMS 1 (1975).
 *
 * The results are published, to the digits given here, and were found on the manual's pages. The
 * data are from memory; that they are right shows in that every printed digit comes out.
 */
export const MINIMAX_EXPONENTIALS = {
  t: [0, 0.2, 0.4, 0.6, 0.8],
  y: [4.501, 4.36, 4.333, 4.418, 4.625],
  printed: { a: '1.0049', b: '2.0149', c: '1.4822', greatestError: '0.00103' },
  /** Worked again by HiGHS through scipy, not published. */
  recomputed: {
    coefficients: [1.0048603602214945, 2.0149335989851136, 1.482240077451902],
    greatestError: 0.0010340366585113636,
  },
} as const;
