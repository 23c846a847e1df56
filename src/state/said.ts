import { effect } from '@preact/signals';
import { allFindings } from '../core/inspection/any-finding';
import { METHOD } from '../core/inspection/method';
import { type SaidOtherwise, saidOf, saidOtherwise } from '../core/inspection/said';
import type { InspectionRecord } from '../store/records';
import { workOut } from './answers';
import { chain } from './chain';
import { putSaid } from './inspections';

/**
 * Keeps with all finished readings of the open part what they say, from when it is worked out: form
 * takes its time. Readings that another version of the method finished are left as they are.
 *
 * @returns what ends it.
 */
export function keepWhatIsSaid(): () => void {
  return effect(() => {
    for (const link of chain.value?.links ?? []) {
      if (link.kind === 'inspection' && isYetToSay(link)) keepSaid(link);
    }
  });
}

function isYetToSay({ closed }: InspectionRecord): boolean {
  return closed !== undefined && closed.method === METHOD && closed.said === undefined;
}

function keepSaid(inspection: InspectionRecord): void {
  const { closed } = inspection;
  if (closed === undefined) return;
  const { answer } = workOut(inspection, closed.part);
  const said = answer && saidOf(allFindings(answer));
  // Records may not be changed while an effect looks at them.
  if (said !== undefined) queueMicrotask(() => putSaid(inspection, said));
}

/** Where a later version of the method says something else of finished readings than was said then. */
export interface MethodChange {
  /** Versions of the method. */
  readonly before: number;
  readonly now: number;
  readonly changes: readonly SaidOtherwise[];
}

/** Undefined where the readings are open, or nothing is known of what was said, or it is said the same. */
export function methodChange(inspection: InspectionRecord): MethodChange | undefined {
  const { part, method, said } = inspection.closed ?? {};
  if (part === undefined || method === undefined || said === undefined) return undefined;
  const { answer } = workOut(inspection, part);
  const saidNow = answer && saidOf(allFindings(answer));
  if (saidNow === undefined) return undefined;
  const changes = saidOtherwise(said, saidNow);
  return changes.length === 0 ? undefined : { before: method, now: METHOD, changes };
}
