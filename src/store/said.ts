import { METHOD } from '../core/inspection/method';
import type { SaidFinding } from '../core/inspection/said';
import type { InspectionRecord } from './records';

/**
 * What finished readings said of each requirement, where this version of the method would say the
 * same: what takes long to work out need not be worked out again for a list. Undefined where it has to.
 */
export function saidByThisMethod({ closed }: InspectionRecord): readonly SaidFinding[] | undefined {
  return closed?.method === METHOD ? closed.said : undefined;
}
