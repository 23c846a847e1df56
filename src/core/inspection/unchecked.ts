import type { EquationCheck } from '../adjustment/checks';
import { isSit } from '../readings/unknowns';
import type { AnyFixedFinding } from './any-finding';
import { foundOf } from './found';

/** A digit too many makes ten of one. */
const FAR_OUT = 10;

/** The readings that no other one checks: a slip in one of them does not show. */
export function uncheckedAmong(checks: readonly EquationCheck[]): readonly EquationCheck[] {
  return checks.filter(
    ({ standardised, reading }) => standardised === undefined && !isSit(reading),
  );
}

/** True where a finding is so many times its tolerance that a slip is likely, and rests on a reading that nothing checks. */
export function mayBeSlip(finding: AnyFixedFinding, checks: readonly EquationCheck[]): boolean {
  const { zone, requirement } = finding;
  if (!('restsOn' in zone) || foundOf(finding).value <= FAR_OUT * requirement.tolerance)
    return false;
  return uncheckedAmong(checks).some(({ reading }) => zone.restsOn.has(reading));
}
