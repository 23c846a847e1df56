import type { Block } from '../part/block';
import { evaluate } from '../part/linear-form';
import type { Requirement } from '../part/requirement';
import { decide, type Verdict } from '../verdict/conformity';
import { probabilityOfConformity } from '../verdict/probability';
import { zoneForms } from '../zones/requirement-forms';
import type { Zone } from '../zones/zone';
import { changeOfUnknowns, type Removal } from './removal';

/** What a removal does to one requirement that has been measured. */
export interface Effect {
  readonly requirement: Requirement;
  readonly before: Zone;
  /** Width and parts as they will be, µm. */
  readonly after: Pick<Zone, 'width' | 'parts'>;
  /** The verdict to expect, with the doubt of the readings before, if exactly so much comes off. */
  readonly verdict: Verdict;
}

/** The effect of `removal` on `requirement`, whose zone was `before`. */
export function effectOf(
  removal: Removal,
  requirement: Requirement,
  before: Zone,
  block: Block,
  level: number,
): Effect {
  const change = changeOfUnknowns(removal);
  const forms = zoneForms(requirement, block);
  const parts = before.parts.map((part, index) => ({
    ...part,
    value: part.value + evaluate(forms[index]!, change),
  }));
  const width = parts.reduce((total, part) => total + Math.abs(part.value), 0);
  const after = { ...before, parts, width };
  const probability = probabilityOfConformity(after, requirement.tolerance);
  return { requirement, before, after, verdict: decide(probability, level) };
}
