import type { Finding } from './findings';
import type { FlatnessFinding } from './flatness';

interface Findings {
  readonly findings: readonly Finding[];
  readonly flatness: readonly FlatnessFinding[];
}

/** What the readings say of any line of the drawing. */
export type AnyFinding = Finding | FlatnessFinding;

/** The same of a line that they fix. */
export type AnyFixedFinding = Extract<AnyFinding, { fixed: true }>;

/** The same of a line that they do not. */
export type AnyUnfixedFinding = Exclude<AnyFinding, { fixed: true }>;

/** What the readings say of all that the drawing asks, flatness last; nothing where there is no answer. */
export function allFindings(answer: Findings | undefined): readonly AnyFinding[] {
  return answer === undefined ? [] : [...answer.findings, ...answer.flatness];
}

/** True while a form is still to be simulated: the verdict may not last. */
export function isPending(finding: AnyFinding): boolean {
  if (!finding.fixed) return false;
  if (!('formPoints' in finding)) return finding.toSimulate !== undefined;
  return finding.formPoints.length > 0 && finding.withForm === undefined;
}
