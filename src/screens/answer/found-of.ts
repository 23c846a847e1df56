import type { AnyFixedFinding } from '../../core/inspection/any-finding';
import { expanded } from '../../core/statistics/coverage';

/** The figure that the verdict is about, and its doubt, µm: with form as soon as there is one with it. */
export function foundOf(finding: AnyFixedFinding) {
  const { zone } = finding;
  if (!('withForm' in finding) || finding.withForm === undefined) {
    return { value: zone.width, doubt: { expanded: expanded(zone) } };
  }
  const { width, low, high } = finding.withForm;
  return { value: width, doubt: { low, high } };
}
