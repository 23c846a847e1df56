import type { NewId } from './new-id';
import { readAgain } from './new-setup';
import type { OverFaceSetup, SetupEntry } from './setup-entry';

/*
 * A setup over a face is one seating of the block, or one levelling on the jacks: its readings share a
 * zero and a tilt. Passed over again after lifting, it is a setup more, which has its own.
 */

/** Which of the seatings that read a face in the same way the setup is, counted from 1. */
export function seatingOf(setups: readonly SetupEntry[], setup: SetupEntry): number {
  const alike = setups.filter(
    ({ kind, faces }) => kind === setup.kind && faces[0] === setup.faces[0],
  );
  return alike.findIndex(({ id }) => id === setup.id) + 1;
}

/** True where no later one reads the same face in the same way. */
export function isLastSeating(setups: readonly SetupEntry[], setup: SetupEntry): boolean {
  const last = setups.findLast(
    ({ kind, faces }) => kind === setup.kind && faces[0] === setup.faces[0],
  );
  return last?.id === setup.id;
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
