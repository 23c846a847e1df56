import type { NewId } from './new-id';
import { readAgain } from './new-setup';
import type { OverFaceSetup, SetupEntry } from './setup-entry';

/*
 * A setup over a face is one seating of the block, or one levelling on the jacks: its readings share a
 * zero and a tilt. Passed over again after lifting, it is a setup more, which has its own.
 */

/** Which of the seatings that read a face in the same way the setup is, counted from 1. */
export function seatingOf(setups: readonly SetupEntry[], setup: SetupEntry): number {
  return seatings(setups, setup).indexOf(setup) + 1;
}

/** True where no later one reads the same face in the same way. */
export function isLastSeating(setups: readonly SetupEntry[], setup: SetupEntry): boolean {
  return seatings(setups, setup).at(-1) === setup;
}

function seatings(setups: readonly SetupEntry[], { kind, faces }: SetupEntry) {
  return setups.filter((one) => one.kind === kind && one.faces[0] === faces[0]);
}

/** The setups with the one over a face read once more after it: at the same places, nothing read yet. */
export function passedOverAgain(
  setups: readonly SetupEntry[],
  { id, kind }: OverFaceSetup,
  newId: NewId,
): readonly SetupEntry[] {
  return setups.flatMap((setup) => {
    const again = setup.id === id && setup.kind === kind ? readAgain(setup, newId) : undefined;
    return again === undefined ? [setup] : [setup, again];
  });
}
