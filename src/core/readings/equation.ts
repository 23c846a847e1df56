import type { LinearForm } from '../part/linear-form';

/** One cause of doubt in a reading. */
export interface Component {
  readonly cause: string;
  /** Standard uncertainty, µm (GUM 4.2, 4.3). */
  readonly standard: number;
}

/**
 * A height or place that is only set so well. It scales the result and not the reading, so it is
 * carried to the results apart from the weights. Equations of one `setting` share the error.
 */
export interface HeightDoubt {
  readonly setting: string;
  /** Change of the reading per mm of height, µm/mm. */
  readonly rate: LinearForm;
  /** Standard uncertainty of the height, mm. */
  readonly standard: number;
}

/** One reading as an equation: `form` of the unknowns = `value` µm, within its doubt. */
export interface Equation {
  readonly reading: string;
  readonly form: LinearForm;
  readonly value: number;
  readonly components: readonly Component[];
  readonly height?: HeightDoubt;
}

/** Combined standard uncertainty of independent components, µm (GUM 5.1.2). */
export function combined(components: readonly Component[]): number {
  return Math.hypot(...components.map((component) => component.standard));
}
