import { adviceOn } from '../../state/advice';
import type { Worked } from '../../state/answers';
import { shop } from '../../state/shop';
import { nextInWords } from '../../words/checks';

interface NextLineProps {
  readonly worked: Worked;
  /** The requirement that the line is for. */
  readonly requirement: string;
  readonly degreesOfFreedom: number;
}

/** The reading worth taking next, where it is this requirement that it helps. */
export function NextLine({ worked, requirement, degreesOfFreedom }: NextLineProps) {
  const next = adviceOn(worked)?.next;
  if (next?.requirement !== requirement) return null;
  return <p class="small">{nextInWords(next, degreesOfFreedom, shop.value.units.deviation)}</p>;
}
