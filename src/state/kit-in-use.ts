import { readWithKit } from '../entry/read-with';
import type { SetupEntry } from '../entry/setup-entry';
import { shop } from './shop';

/** The setup to be read with what the kit in use has out of the drawer. */
export function withKitInUse(setup: SetupEntry): SetupEntry {
  const { kit, drawer = [] } = shop.value;
  return readWithKit(setup, kit, drawer);
}
