import type { LinearForm } from '../part/linear-form';

/** What makes a reading doubtful. */
export type Cause =
  | 'indicator resolution'
  | 'indicator error'
  | 'lever angle'
  | 'seating'
  | 'plate'
  | 'micrometer resolution'
  | 'micrometer error'
  | 'height setting'
  | 'warmth'
  | 'assumption';

/** One cause of doubt in one reading, independent of every other reading. */
export interface Component {
  readonly cause: Cause;
  /** Standard uncertainty, µm (GUM 4.2, 4.3). */
  readonly standard: number;
  /** How well that is known itself; left out, for certain. */
  readonly degreesOfFreedom?: number;
}

/**
 * A doubt that several readings share, such as the height of one setting or the warmth of the
 * part. It is carried to the results apart from the weights, so that it cancels where it should.
 */
export interface SharedDoubt {
  readonly cause: Cause;
  /** Doubts of one source are one and the same error. */
  readonly source: string;
  /**
   * Shift of the reading, µm, for one standard uncertainty of the source: a number, or a form of the
   * unknowns where it depends on them.
   */
  readonly shift: number | LinearForm;
}

/** One reading as an equation: `form` of the unknowns = `value` µm, within its doubt. */
export interface Equation {
  readonly reading: string;
  readonly form: LinearForm;
  readonly value: number;
  readonly components: readonly Component[];
  readonly shared: readonly SharedDoubt[];
}

/** Combined standard uncertainty of independent components, µm (GUM 5.1.2). */
export function combined(components: readonly Component[]): number {
  return Math.hypot(...components.map((component) => component.standard));
}
