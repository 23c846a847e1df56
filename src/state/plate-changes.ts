import { withWay } from '../entry/make-way';
import type { PairToRead } from '../entry/pairs-to-read';
import { isComparatorUnset } from '../entry/read-once';
import type { SetupEntry, SetupKind } from '../entry/setup-entry';
import type { InspectionRecord } from '../store/records';
import { asItIs, putLinks } from './chain';
import { newSetupWithKit } from './kit-in-use';
import { changedNow, now } from './shop';
import { noteChange, noteConversion, withoutLastChange } from './undo';

/** Puts `after` in the place of `before`, so that it can be taken back. */
function putChange(before: InspectionRecord, after: InspectionRecord): void {
  const changed = changedNow(after);
  noteChange(before, changed);
  putLinks(changed.part, [changed]);
}

/** Changes what is read, from what it is by now. */
export function changeSetups(
  inspection: InspectionRecord,
  change: (setups: readonly SetupEntry[]) => readonly SetupEntry[],
): void {
  const now = asItIs(inspection);
  // A screen may not have drawn yet that they are finished.
  if (now.closed !== undefined) return;
  putChange(now, { ...now, setups: change(now.setups) });
}

/** Puts what is typed into other units: that is no change to take back, and what was before goes along. */
export function convertSetups(
  inspection: InspectionRecord,
  convert: (setups: readonly SetupEntry[]) => readonly SetupEntry[],
): void {
  const now = asItIs(inspection);
  if (now.closed !== undefined) return;
  const converted = { ...now, setups: convert(now.setups) };
  noteConversion(now, converted, convert);
  putLinks(now.part, [converted]);
}

/** Takes the last change at the plate back: what was typed, added, removed or left out. */
export function undo(inspection: InspectionRecord): void {
  const before = withoutLastChange(asItIs(inspection));
  if (before !== undefined) putLinks(before.part, [before]);
}

/** Changes one setup, from what it is by now; none where it has been taken away since. */
export function changeSetup<S extends SetupEntry>(
  inspection: InspectionRecord,
  { id, kind }: S,
  change: (setup: S) => S,
): void {
  changeSetups(inspection, (setups) =>
    // A setup keeps its kind for life, so what has this id and kind is an S.
    setups.map((setup) => (setup.id === id && setup.kind === kind ? change(setup as S) : setup)),
  );
}

/**
 * Adds a setup of each kind for a pair of faces, changed by `then` where it is given. Empty ones that
 * nobody has touched make way for what is chosen instead of them.
 */
export function addSetups(
  inspection: InspectionRecord,
  kinds: readonly SetupKind[],
  pair: PairToRead,
  then: (setup: SetupEntry) => SetupEntry = (setup) => setup,
): void {
  const added = kinds.map((kind) => then(newSetupWithKit(kind, pair)));
  changeSetups(inspection, (setups) => withWay(setups, added, freshLike));
}

/** Reads with a column, over the same faces, wherever a nose comparator was begun that nobody has set. */
export function readWithColumn(inspection: InspectionRecord): void {
  changeSetups(inspection, (setups) =>
    setups.map((setup) => (isComparatorUnset(setup) ? newSetupWithKit('column', setup) : setup)),
  );
}

/** The setup as it would be if it were new by now. */
function freshLike(setup: SetupEntry): SetupEntry {
  const { kind, faces } = setup;
  return newSetupWithKit(kind, { faces, base: 'base' in setup ? setup.base : faces[1] });
}

/** Takes a reading out of the reckoning. What was typed stays, and so does the reason. */
export function leaveOut(inspection: InspectionRecord, reading: string, why: string): void {
  const current = asItIs(inspection);
  if (current.closed !== undefined) return;
  const leftOut = { ...current.leftOut, [reading]: { at: now(), why } };
  putChange(current, { ...current, leftOut });
}

/** Takes a reading back into the reckoning. */
export function putBack(inspection: InspectionRecord, reading: string): void {
  const current = asItIs(inspection);
  if (current.closed !== undefined) return;
  const { [reading]: _, ...leftOut } = current.leftOut ?? {};
  putChange(current, { ...current, leftOut });
}

/** Shows a guide or a reminder no more with this inspection. */
export function dismiss(inspection: InspectionRecord, what: string): void {
  const current = asItIs(inspection);
  if (current.closed !== undefined) return;
  putLinks(current.part, [{ ...current, dismissed: [...(current.dismissed ?? []), what] }]);
}
