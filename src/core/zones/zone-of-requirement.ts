import type { Adjustment } from '../adjustment/adjustment';
import type { Block } from '../part/block';
import type { Requirement } from '../part/requirement';
import { zoneForms } from './requirement-forms';
import { type Zone, zoneOf } from './zone';

/** The zone of `requirement` over the full face, or undefined where the readings do not fix it. */
export function zoneOfRequirement(
  requirement: Pick<Requirement, 'face' | 'datum'>,
  block: Block,
  adjustment: Adjustment,
): Zone | undefined {
  const forms = zoneForms(requirement, block);
  const estimates = forms.flatMap((form) => adjustment.estimate(form) ?? []);
  if (estimates.length < forms.length) return undefined;
  const [first, second] = forms;
  const covariance =
    first !== undefined && second !== undefined ? adjustment.covariance(first, second) : 0;
  const restsOn = new Set(estimates.flatMap((estimate) => [...estimate.restsOn]));
  return zoneOf(estimates, covariance ?? 0, restsOn);
}
