import { signal } from '@preact/signals';

/** Whether the browser has promised not to clear what is stored; undefined while that is not known. */
export const isKept = signal<boolean | undefined>(undefined);

/** Asks whether the browser has promised it already. */
export async function lookWhetherKept(): Promise<void> {
  isKept.value = await storage()
    ?.persisted()
    .catch(() => false);
}

/** Asks the browser to keep what is stored even where space runs short. */
export async function askToKeep(): Promise<void> {
  isKept.value = await storage()
    ?.persist()
    .catch(() => false);
}

/** Browsers leave it out on pages without HTTPS. */
function storage(): StorageManager | undefined {
  return 'storage' in navigator && 'persist' in navigator.storage ? navigator.storage : undefined;
}

/** True in a browser tab on an iPhone or iPad: what is stored there goes after seven days without a visit. */
export function isTabOnIos(): boolean {
  return 'standalone' in navigator && navigator.standalone !== true;
}
