import { expanded } from '../statistics/coverage';
import type { AnyFixedFinding } from './any-finding';

/** A figure and its doubt, µm. */
export interface Found {
  readonly value: number;
  /** Expanded uncertainty, or between what it lies in 95 % of cases. */
  readonly doubt: { readonly expanded: number } | { readonly low: number; readonly high: number };
}

/** The figure that the verdict is about: with form as soon as there is one with it. */
export function foundOf(finding: AnyFixedFinding): Found {
  const { zone } = finding;
  if (!('withForm' in finding) || finding.withForm === undefined) {
    return { value: zone.width, doubt: { expanded: expanded(zone) } };
  }
  const { width, low, high } = finding.withForm;
  return { value: width, doubt: { low, high } };
}

/** From where to where a figure lies with its doubt, µm. */
export function rangeOf({ value, doubt }: Found): { readonly low: number; readonly high: number } {
  if (!('expanded' in doubt)) return doubt;
  return { low: value - doubt.expanded, high: value + doubt.expanded };
}
