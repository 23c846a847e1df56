import { isFourSided, isStanding } from './four-sides';
import { isRepeat } from './placings';
import { hasReadings } from './read-with';
import type { NoseComparatorSetup, SetupEntry } from './setup-entry';
import { isBlank } from './typed-length';

/** True where nothing has been read yet with any of the setups. */
export function isUnread(setups: readonly SetupEntry[]): boolean {
  return !setups.some(hasReadings);
}

/** True for a nose comparator that nobody has set yet, standing as it was begun. */
export function isComparatorUnset(setup: SetupEntry): setup is NoseComparatorSetup {
  return (
    setup.kind === 'nose comparator' &&
    isBlank(setup.noseHeight) &&
    isBlank(setup.indicatorHeight) &&
    !isFourSided(setup) &&
    !hasReadings(setup)
  );
}

/** True where both sides have been read by comparator or column, and none after lifting the block again. */
export function isReadOnce(setups: readonly SetupEntry[]): boolean {
  const seated = setups.filter(isStanding);
  return (
    seated.length > 0 &&
    seated.every(({ placings }) => placings.every(({ id }) => !isRepeat(placings, id))) &&
    seated.every((setup) =>
      setup.kind === 'column'
        ? setup.placings.every(({ readings }) => !Object.values(readings).some(isBlank))
        : setup.placings.every(({ reading }) => !isBlank(reading)),
    )
  );
}
