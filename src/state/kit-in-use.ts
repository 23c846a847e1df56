import { newSetup } from '../entry/new-setup';
import type { PairToRead } from '../entry/pairs-to-read';
import { readWithKit } from '../entry/read-with';
import type { SetupEntry, SetupKind } from '../entry/setup-entry';
import { newId, shop } from './shop';
import { entryUnits } from './shop-settings';

/** The setup to be read with what the kit in use has out of the drawer. */
export function withKitInUse(setup: SetupEntry): SetupEntry {
  const { kit, drawer = [] } = shop.value;
  return readWithKit(setup, kit, drawer);
}

/** A new setup of `kind` for a pair, to be read so, with its fields still empty. */
export function newSetupWithKit(kind: SetupKind, { faces, base }: PairToRead): SetupEntry {
  return withKitInUse(newSetup(kind, faces, base, entryUnits.value, newId));
}
