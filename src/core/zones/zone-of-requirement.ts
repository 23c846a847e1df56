import type { Adjustment, Estimate } from '../adjustment/adjustment';
import type { Block } from '../part/block';
import { scaled, sum } from '../part/linear-form';
import type { Requirement } from '../part/requirement';
import { zoneForms } from './requirement-forms';
import type { Zone } from './zone';

/** The zone of `requirement` over the full face, or undefined where the readings do not fix it. */
export function zoneOfRequirement(
  requirement: Pick<Requirement, 'face' | 'datum'>,
  block: Block,
  adjustment: Adjustment,
): Zone | undefined {
  const forms = zoneForms(requirement, block);
  const parts = forms.flatMap((form) => adjustment.estimate(form) ?? []);
  if (parts.length < forms.length) return undefined;
  const [first, second] = forms;
  const covariance = first && second ? adjustment.covariance(first, second) : 0;
  const signed = forms.map((form, index) => scaled(form, signOf(parts[index]!.value)));
  const { value, ...doubt } = adjustment.estimate(sum(...signed))!;
  return {
    ...doubt,
    parts: parts.map(({ value: part, standard }: Estimate) => ({ value: part, standard })),
    covariance: covariance ?? 0,
    width: Math.abs(value),
    restsOn: new Set(parts.flatMap(({ restsOn }) => [...restsOn])),
  };
}

function signOf(value: number): 1 | -1 {
  return value < 0 ? -1 : 1;
}
