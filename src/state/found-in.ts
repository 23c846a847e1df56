import { scaledEstimate } from '../core/adjustment/scaled-estimate';
import { expanded } from '../core/statistics/coverage';
import type { PartEntry } from '../entry/part-entry';
import type { SetupEntry } from '../entry/setup-entry';
import type { FoundComparator, FoundPass } from '../store/found';
import type { InspectionRecord, WorkRecord } from '../store/records';
import { workOutFlat } from './answers';
import type { Link } from './chain';
import { workOutcome } from './outcomes';

/** A lean is kept over this length, mm. */
export const LEAN_KEPT_OVER = 100;

/** What a finished inspection, or one that fixes all that is asked, says of its comparators. */
export function comparatorsIn(
  inspection: InspectionRecord,
  entry: PartEntry,
): readonly FoundComparator[] {
  const { answer } = workOutFlat(inspection, entry);
  if (answer === undefined) return [];
  const isComplete = inspection.closed !== undefined || answer.findings.every(({ fixed }) => fixed);
  if (!isComplete) return [];
  return answer.comparators.flatMap((comparator): readonly FoundComparator[] => {
    const { kind, estimate } = comparator;
    const id = kind === 'zero' ? comparator.setting : comparator.column;
    const setup = inspection.setups.find((one) => one.id === id);
    if (estimate === undefined || setup === undefined) return [];
    const told = scaledEstimate(estimate, kind === 'lean' ? LEAN_KEPT_OVER : 1);
    const at = inspection.closed?.at ?? inspection.made;
    const found = { at, inspection: inspection.id, kind, ...filedAs(setup) };
    return [{ ...found, value: told.value, expanded: expanded(told) }];
  });
}

/**
 * A zero belongs to a comparator at a setting, told by the heights of nose and indicator; a lean to a
 * column. Which one it was is told where somebody has said so: it keeps its id under another name.
 */
function filedAs(setup: SetupEntry): { readonly name: string; readonly title: string } {
  const instrument = 'instrument' in setup ? setup.instrument : undefined;
  if (setup.kind !== 'nose comparator') {
    return { name: instrument?.id ?? 'Column', title: instrument?.name ?? 'Column' };
  }
  const [nose, indicator] = [setup.noseHeight, setup.indicatorHeight].map(
    ({ text, unit }) => `${text.trim()} ${unit}`,
  );
  const setting = `Nose at ${nose}, indicator at ${indicator}`;
  if (instrument === undefined) return { name: setting, title: setting };
  return { name: `${instrument.id}: ${setting}`, title: `${instrument.name}: ${setting}` };
}

/** The pass that a piece of work tells of: none where it has no amount, or was not measured before and after. */
export function passIn(
  work: WorkRecord,
  links: readonly Link[],
  entry: PartEntry,
): readonly FoundPass[] {
  const done = workOutcome(work, links, entry, workOutFlat);
  if (done?.outcome === undefined || done.rate === undefined) return [];
  const { id, part, made, method, abrasive, amount, notLearned } = work;
  const told = { id, part, made, method, abrasive, amount, ...(notLearned && { notLearned }) };
  return [{ ...done.outcome, amount: done.rate.amount, work: told }];
}
