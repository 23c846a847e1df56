import { expanded } from '../statistics/coverage';
import type { Verdict } from '../verdict/conformity';
import { type AnyFinding, type AnyFixedFinding, isPending } from './any-finding';

/** What was said of one requirement, in numbers. */
export interface SaidFinding {
  /** Id of the requirement. */
  readonly requirement: string;
  /** Left out where the readings did not fix it. */
  readonly found?: Found;
}

interface Found {
  /** Width of the zone, of the plane where there is one, and its expanded uncertainty, µm. */
  readonly value: number;
  readonly expanded: number;
  /** With form, where the readings showed it: the width and the interval for 95 %, µm. */
  readonly withForm?: { readonly width: number; readonly low: number; readonly high: number };
  /** Probability of conformity. */
  readonly probability: number;
  readonly verdict: Verdict;
}

/** What the findings say; undefined while the form in one of them is not worked out yet. */
export function saidOf(findings: readonly AnyFinding[]): readonly SaidFinding[] | undefined {
  if (findings.some(isPending)) return undefined;
  return findings.map((finding) => {
    const { id: requirement } = finding.requirement;
    return finding.fixed ? { requirement, found: foundIn(finding) } : { requirement };
  });
}

function foundIn(finding: AnyFixedFinding): Found {
  const { zone, probability, verdict } = finding;
  const withForm = 'formPoints' in finding ? finding.withForm : undefined;
  const form = withForm && { width: withForm.width, low: withForm.low, high: withForm.high };
  return {
    ...{ value: zone.width, expanded: expanded(zone), probability, verdict },
    ...(form && { withForm: form }),
  };
}

/** Differences below these are rounding: µm, and probability. */
const ROUNDING = { length: 1e-6, probability: 1e-6 } as const;

/** A requirement of which something else is said now than before; undefined where it was, or is, not fixed. */
export interface SaidOtherwise {
  readonly requirement: string;
  readonly before: Found | undefined;
  readonly now: Found | undefined;
}

/** Where what is said now differs from what was said before, by more than rounding. */
export function saidOtherwise(
  before: readonly SaidFinding[],
  now: readonly SaidFinding[],
): readonly SaidOtherwise[] {
  return now.flatMap(({ requirement, found }) => {
    const was = before.find((one) => one.requirement === requirement)?.found;
    return isSame(was, found) ? [] : [{ requirement, before: was, now: found }];
  });
}

function isSame(one: Found | undefined, other: Found | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  const lengths = [
    [one.value, other.value],
    [one.expanded, other.expanded],
    [one.withForm?.width ?? 0, other.withForm?.width ?? 0],
  ];
  return (
    one.verdict === other.verdict &&
    Math.abs(one.probability - other.probability) <= ROUNDING.probability &&
    lengths.every(([a = 0, b = 0]) => Math.abs(a - b) <= ROUNDING.length * Math.max(1, Math.abs(a)))
  );
}
