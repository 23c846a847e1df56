import { erasePart } from '../store/erase';
import { tellOtherWindows } from '../store/other-windows';
import type { PartRecord } from '../store/records';
import { chain } from './chain';
import { savingState } from './saving';
import { lastRemoved } from './shelves';
import { parts } from './shop';

/**
 * Erases a removed part with all that happened to it, for good.
 *
 * @returns false where that was not possible: it is still there.
 */
export async function eraseForGood(part: PartRecord): Promise<boolean> {
  const isRemoved = parts.peek().get(part.id)?.removed !== undefined;
  if (!isRemoved || savingState.value !== 'saved') return false;
  try {
    tellOtherWindows(await erasePart(part.id));
  } catch (error) {
    console.error(error);
    return false;
  }
  const rest = new Map(parts.value);
  rest.delete(part.id);
  parts.value = rest;
  if (chain.value?.part === part.id) chain.value = undefined;
  if (lastRemoved.value === part.id) lastRemoved.value = undefined;
  return true;
}
