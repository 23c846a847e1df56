import { get, set } from 'idb-keyval';
import { records } from './database';

const KEY = 'recovery';

/** Everything as it was before something was merged into it, as a backup file. */
export interface RecoveryCopy {
  /** When it was kept, ISO 8601 in UTC. */
  readonly made: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** Keeps a copy, in place of the one before. */
export function keepRecoveryCopy(copy: RecoveryCopy): Promise<void> {
  return set(KEY, copy, records);
}

export function loadRecoveryCopy(): Promise<RecoveryCopy | undefined> {
  return get<RecoveryCopy>(KEY, records);
}
