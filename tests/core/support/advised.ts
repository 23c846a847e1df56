import type { Plan } from '../../../src/core/correction/plan/plan';
import type { Plans } from '../../../src/core/correction/plan/plans-for';
import { type Advice, advise } from '../../../src/core/inspection/advise';
import { inspect } from '../../../src/core/inspection/inspect';
import type { Face } from '../../../src/core/part/faces';
import type { Part } from '../../../src/core/part/part';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { DEFAULT_LEVEL } from '../../../src/core/verdict/conformity';
import { known } from './known';

/** Half of each tolerance may be taken up. */
export const HALF = { level: DEFAULT_LEVEL, share: 0.5 };

/** What to do about `readings` of `part`. */
export function adviceOn(part: Part, readings: readonly Reading[], kit = DEFAULT_KIT): Advice {
  return advise(part, inspect(part, readings, kit, HALF.level), HALF);
}

/** The plan that works nothing but `face`. */
export function planOn({ single }: Plans, face: Face): Plan {
  return known(single.find(({ faces }) => faces[0] === face));
}
