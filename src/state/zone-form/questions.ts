import type { Finding } from '../../core/inspection/findings';
import type { Seatings } from '../../core/inspection/seatings';
import type { ToSettleWithForm } from '../../core/inspection/seatings-with-form';
import type { WideMap } from '../../core/verdict/flatness-conformity';
import type { SimulatedZone, ZoneToSimulate } from '../../core/verdict/monte-carlo';

export type FixedFinding = Extract<Finding, { fixed: true }>;

/** Something to be worked out. */
export type Question = QuestionForWorker | FlatnessQuestion;

export type QuestionForWorker = ZoneQuestion | SeatingsQuestion;

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

/** How likely it is that noise alone made a map as wide as it is. */
export interface FlatnessQuestion extends Asked {
  readonly kind: 'flatness';
  readonly map: WideMap;
}

/** How many more seatings would settle it. */
interface SeatingsQuestion extends Asked {
  readonly kind: 'seatings';
  readonly toSettle: ToSettleWithForm;
}

export type Answer =
  | { readonly kind: 'zone'; readonly key: string; readonly zone: SimulatedZone }
  | { readonly kind: 'flatness'; readonly key: string; readonly probability: number }
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

/** How likely it is that a face with the map of `requirement` is flat all the same. */
export function flatnessQuestion(requirement: string, map: WideMap): FlatnessQuestion {
  return { kind: 'flatness', asker: requirement, key: keyOf(map), map };
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
function keyOf(asked: ZoneToSimulate | WideMap | ToSettleWithForm): string {
  return JSON.stringify(asked);
}
