import { addHeight, removeHeight, withHeight } from './column-heights';
import { isStanding, type StandingSetup } from './four-sides';
import type { NewId } from './new-id';
import { hasReadings } from './read-with';
import type { SetupEntry } from './setup-entry';
import { isBlank, type TypedLength } from './typed-length';

/** Of the setups of the same kind the first with all of its heights, where `setup` has none yet and nothing is read with it. */
export function heightsToTakeOver(
  setup: SetupEntry,
  setups: readonly SetupEntry[],
): StandingSetup | undefined {
  if (!isStanding(setup) || hasReadings(setup)) return undefined;
  if (!heightsOf(setup).every(isBlank)) return undefined;
  return setups.find(
    (one): one is StandingSetup =>
      isStanding(one) && one.kind === setup.kind && !heightsOf(one).some(isBlank),
  );
}

/** The setup at the heights of `other`, as they were typed. */
export function withHeightsOf(setup: SetupEntry, other: StandingSetup, newId: NewId): SetupEntry {
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

function heightsOf(setup: StandingSetup): readonly TypedLength[] {
  return setup.kind === 'column'
    ? setup.heights.map(({ height }) => height)
    : [setup.noseHeight, setup.indicatorHeight];
}
