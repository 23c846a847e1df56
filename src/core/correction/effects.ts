import type { Block } from '../part/block';
import { evaluate } from '../part/linear-form';
import type { Requirement } from '../part/requirement';
import type { Verdict } from '../verdict/conformity';
import { zoneForms } from '../zones/requirement-forms';
import type { Zone } from '../zones/zone';
import { type FormPoint, widthWithForm } from '../zones/zone-with-form';
import { expectedVerdict } from './expected-verdict';
import { changeByAll, type Removal } from './removal';

/** What removals do to one requirement that has been measured. */
export interface Effect {
  readonly requirement: Requirement;
  readonly before: Zone;
  /** Width and parts as they will be, µm. */
  readonly after: Pick<Zone, 'width' | 'parts'>;
  /** Widths before and after, µm, with the form that the readings show; the cut leaves it as it is. */
  readonly withForm: { readonly before: number; readonly after: number };
  /**
   * The verdict to expect, with the doubt of the readings before, if exactly so much comes off. What
   * form adds to the width is taken off the tolerance.
   */
  readonly verdict: Verdict;
}

/** The effect of one or more removals on `requirement`, whose zone was `before`. */
export function effectOf(
  removals: Removal | readonly Removal[],
  requirement: Requirement,
  before: Zone,
  block: Block,
  level: number,
  formPoints: readonly FormPoint[] = [],
): Effect {
  const change = changeByAll([removals].flat());
  const forms = zoneForms(requirement, block);
  const parts = before.parts.map((part, index) => ({
    ...part,
    value: part.value + evaluate(forms[index]!, change),
  }));
  const width = parts.reduce((total, part) => total + Math.abs(part.value), 0);
  const after = { ...before, parts, width };
  const [widthBefore, widthAfter] = [before, after].map((zone) =>
    widthWithForm(
      zone.parts.map(({ value }) => value),
      formPoints,
    ),
  );
  const left = requirement.tolerance - (widthAfter! - width);
  const withForm = { before: widthBefore!, after: widthAfter! };
  return { requirement, before, after, withForm, verdict: expectedVerdict(after, left, level) };
}
