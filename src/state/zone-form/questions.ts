import type { Finding } from '../../core/inspection/findings';
import type { SimulatedZone, ZoneToSimulate } from '../../core/verdict/monte-carlo';

export type FixedFinding = Extract<Finding, { fixed: true }>;

/** A zone to be worked out. */
export interface Question {
  /** The requirement that asks: of one requirement only the last question is wanted. */
  readonly asker: string;
  /** All that the answer hangs on. */
  readonly key: string;
  readonly zone: ZoneToSimulate;
}

export interface Answer {
  readonly key: string;
  readonly zone: SimulatedZone;
}

/** What there is to ask of `finding`. */
export function questionOf({ requirement, zone, formPoints }: FixedFinding): Question {
  const asked: ZoneToSimulate = {
    parts: zone.parts,
    covariance: zone.covariance,
    degreesOfFreedom: zone.degreesOfFreedom,
    points: formPoints,
    tolerance: requirement.tolerance,
  };
  // Infinite degrees become null: they are the only ones that do.
  return { asker: requirement.id, key: JSON.stringify(asked), zone: asked };
}
