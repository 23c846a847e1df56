import { addHeight, removeHeight, withHeight } from './column-heights';
import type { NewId } from './new-id';
import { hasReadings } from './read-with';
import type { ColumnSetup, NoseComparatorSetup, SetupEntry } from './setup-entry';
import { isBlank, type TypedLength } from './typed-length';

/** What is set at heights over the plate before a side is read. */
export type SetAtHeights = ColumnSetup | NoseComparatorSetup;

/** Of the setups of the same kind the first with all of its heights, where `setup` has none yet and nothing is read with it. */
export function heightsToTakeOver(
  setup: SetupEntry,
  setups: readonly SetupEntry[],
): SetAtHeights | undefined {
  if (!isSetAtHeights(setup) || hasReadings(setup)) return undefined;
  if (!heightsOf(setup).every(isBlank)) return undefined;
  return setups.find(
    (one): one is SetAtHeights =>
      isSetAtHeights(one) && one.kind === setup.kind && !heightsOf(one).some(isBlank),
  );
}

/** The setup at the heights of `other`, as they were typed. */
export function withHeightsOf(setup: SetupEntry, other: SetAtHeights, newId: NewId): SetupEntry {
  if (setup.kind === 'nose comparator' && other.kind === setup.kind) {
    const { noseHeight, indicatorHeight } = other;
    return { ...setup, noseHeight, indicatorHeight };
  }
  if (setup.kind === 'column' && other.kind === setup.kind) {
    let same = setup;
    while (same.heights.length < other.heights.length) same = addHeight(same, newId);
    while (same.heights.length > other.heights.length) same = removeHeight(same);
    for (const [row, { height }] of other.heights.entries()) {
      same = withHeight(same, same.heights[row]?.id ?? '', height);
    }
    return same;
  }
  return setup;
}

function isSetAtHeights(setup: SetupEntry): setup is SetAtHeights {
  return setup.kind === 'column' || setup.kind === 'nose comparator';
}

function heightsOf(setup: SetAtHeights): readonly TypedLength[] {
  return setup.kind === 'column'
    ? setup.heights.map(({ height }) => height)
    : [setup.noseHeight, setup.indicatorHeight];
}
