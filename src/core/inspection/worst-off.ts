import type { AnyFinding, AnyFixedFinding } from './any-finding';

/**
 * The line of the drawing that is worst off, of those that the readings fix: the one least likely to
 * be met and, between alike, the one with most of its tolerance used up. It decides what happens next.
 */
export function worstOff(findings: readonly AnyFinding[]): AnyFixedFinding | undefined {
  const fixed = findings.filter((finding): finding is AnyFixedFinding => finding.fixed);
  return [...fixed].sort((a, b) => a.probability - b.probability || shareUsed(b) - shareUsed(a))[0];
}

function shareUsed({ zone, requirement }: AnyFixedFinding): number {
  return zone.width / requirement.tolerance;
}
