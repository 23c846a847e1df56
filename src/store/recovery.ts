import { get } from 'idb-keyval';
import { records } from './database';

export const RECOVERY_KEY = 'recovery';

/** Everything as it was before something was merged into it, as a backup file. */
export interface RecoveryCopy {
  /** When it was kept, ISO 8601 in UTC. */
  readonly made: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** The copy from before the last merge. */
export function loadRecoveryCopy(): Promise<RecoveryCopy | undefined> {
  return get<RecoveryCopy>(RECOVERY_KEY, records);
}
