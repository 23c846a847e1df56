import { type Adjustment, adjust } from '../adjustment/adjustment';
import { scaled, sum } from '../part/linear-form';
import type { Part } from '../part/part';
import { equationsOf } from '../readings/equations-of';
import type { Kit } from '../readings/kit';
import type { Reading } from '../readings/reading';
import { zoneForms } from '../zones/requirement-forms';
import { furtherReadings } from './candidates';
import type { Remedy } from './candidates/candidate';
import type { Finding } from './findings';

/** The further reading that would narrow a requirement's doubt most, and how far. */
export interface NextReading {
  readonly requirement: string;
  readonly remedy: Remedy;
  /** Standard uncertainty of the width now and with it, µm: of that of the planes, form left out. */
  readonly now: number;
  readonly then: number;
  /** True where the readings show form, the doubt of which comes on top. */
  readonly hasForm: boolean;
}

/** A gain below this part of the doubt is not worth the walk. */
const WORTH_IT = 0.02;

/**
 * The reading still possible that most reduces the doubt of the requirement hardest to decide: the
 * one whose probability of conformity lies nearest to one half. Undefined where none is fixed, or
 * no single reading helps.
 *
 * @param present the adjustment of the readings that there are.
 */
export function nextReading(
  part: Part,
  readings: readonly Reading[],
  kit: Kit,
  findings: readonly Finding[],
  present: Adjustment,
): NextReading | undefined {
  const fixed = findings.flatMap((finding) => (finding.fixed ? [finding] : []));
  const [hardest] = [...fixed].sort(
    (a, b) => Math.abs(a.probability - 0.5) - Math.abs(b.probability - 0.5),
  );
  if (hardest === undefined) return undefined;
  const { requirement, zone, formPoints } = hardest;
  // The width at the signs that its parts have now: what the next reading will say is not known.
  const signed = zoneForms(requirement, part.block).map((form, index) =>
    scaled(form, zone.parts[index]!.value < 0 ? -1 : 1),
  );
  const options = furtherReadings(requirement, readings, part.block).flatMap((candidate) => {
    const equations = equationsOf([...readings, ...candidate.readings], part.block, kit);
    const then = adjust(equations, present.valueOf).estimate(sum(...signed))?.standard;
    return then === undefined ? [] : [{ remedy: candidate.remedy, then }];
  });
  const [best] = options.sort((a, b) => a.then - b.then);
  if (best === undefined || best.then > zone.standard * (1 - WORTH_IT)) return undefined;
  const hasForm = formPoints.length > 0;
  return { requirement: requirement.id, ...best, now: zone.standard, hasForm };
}
