import { isWithinDoubt } from '../statistics/coverage';
import { type AnyFinding, type AnyFixedFinding, isPending } from './any-finding';
import type { Finding } from './findings';
import type { FlatnessFinding } from './flatness';

/** How sure it is that a wedge is to come off. */
export type WedgeNeed =
  /** No line of the drawing that has a datum is fixed by the readings. */
  | 'not measured'
  /** All of them that were measured are in. */
  | 'in'
  /** Not all are in, and no error of these is larger than its doubt: which edge is high is not sure. */
  | 'within doubt'
  /** Not all are in, and none is sure to be out. */
  | 'likely'
  /** At least one is out. */
  | 'sure';

/** What the readings ask for. */
export interface Need {
  readonly wedge: WedgeNeed;
  /** Of the faces that are to be flat and were mapped; undefined where there is none. */
  readonly areFlat: boolean | undefined;
}

interface Findings {
  readonly findings: readonly Finding[];
  readonly flatness: readonly FlatnessFinding[];
}

/** What the readings ask for: how sure a wedge is, and whether the faces are flat. */
export function needOf({ findings, flatness }: Findings): Need {
  const measured = findings.filter((finding) => finding.fixed);
  const mapped = flatness.filter((finding) => finding.fixed);
  return {
    wedge: wedgeNeed(measured),
    areFlat: mapped.length === 0 ? undefined : mapped.every(isIn),
  };
}

function wedgeNeed(measured: readonly Extract<Finding, { fixed: true }>[]): WedgeNeed {
  if (measured.length === 0) return 'not measured';
  const notIn = measured.filter((finding) => !isIn(finding));
  if (notIn.length === 0) return 'in';
  if (notIn.every(({ zone }) => zone.parts.every((part) => isWithinDoubt({ ...zone, ...part })))) {
    return 'within doubt';
  }
  return notIn.some(({ verdict }) => verdict === 'out') ? 'sure' : 'likely';
}

/** True where any line of the drawing is out, and nothing more is to be worked out of it. */
export function isAnyOut(findings: readonly AnyFinding[]): boolean {
  return findings.some(
    (finding) => finding.fixed && !isPending(finding) && finding.verdict === 'out',
  );
}

function isIn({ verdict }: Pick<AnyFixedFinding, 'verdict'>): boolean {
  return verdict === 'in';
}
