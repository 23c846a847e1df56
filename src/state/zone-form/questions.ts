import type { Finding } from '../../core/inspection/findings';
import type { Seatings } from '../../core/inspection/seatings';
import type { ToSettleWithForm } from '../../core/inspection/seatings-with-form';
import type { SimulatedZone, ZoneToSimulate } from '../../core/verdict/monte-carlo';

export type FixedFinding = Extract<Finding, { fixed: true }>;

/** True while the form is worked out: the verdict on the plane alone may not last. */
export function awaitsForm({ formPoints, withForm }: FixedFinding): boolean {
  return formPoints.length > 0 && withForm === undefined;
}

/** Something to be worked out. */
export type Question = ZoneQuestion | SeatingsQuestion;

interface Asked {
  /** The requirement that asks: of one requirement only the last question is wanted. */
  readonly asker: string;
  /** All that the answer hangs on. */
  readonly key: string;
}

/** How wide a zone with form is. */
interface ZoneQuestion extends Asked {
  readonly kind: 'zone';
  readonly zone: ZoneToSimulate;
}

/** How many more seatings would settle it. */
interface SeatingsQuestion extends Asked {
  readonly kind: 'seatings';
  readonly toSettle: ToSettleWithForm;
}

export type Answer =
  | { readonly kind: 'zone'; readonly key: string; readonly zone: SimulatedZone }
  | { readonly kind: 'seatings'; readonly key: string; readonly seatings: Seatings };

/** How wide the zone of `finding` is with its form. */
export function zoneQuestion({ requirement, zone, formPoints }: FixedFinding): ZoneQuestion {
  const asked: ZoneToSimulate = {
    parts: zone.parts,
    covariance: zone.covariance,
    degreesOfFreedom: zone.degreesOfFreedom,
    points: formPoints,
    tolerance: requirement.tolerance,
  };
  return { kind: 'zone', asker: requirement.id, key: keyOf(asked), zone: asked };
}

/** What a verdict hangs on besides the finding. */
export type Grounds = Pick<ToSettleWithForm, 'block' | 'readings' | 'kit' | 'level'>;

/** How many more seatings would settle the verdict on `finding` with its form. */
export function seatingsQuestion(
  { requirement, zone, formPoints }: FixedFinding,
  grounds: Grounds,
): SeatingsQuestion {
  const { parts, covariance, degreesOfFreedom } = zone;
  const toSettle: ToSettleWithForm = {
    ...grounds,
    requirement,
    zone: { parts, covariance, degreesOfFreedom },
    points: formPoints,
  };
  return { kind: 'seatings', asker: requirement.id, key: keyOf(toSettle), toSettle };
}

/** Infinite degrees become null: they are the only ones that do. */
function keyOf(asked: ZoneToSimulate | ToSettleWithForm): string {
  return JSON.stringify(asked);
}
