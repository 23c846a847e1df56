import type { PartRecord } from '../store/records';
import { loadParts, loadShop, loadSummaries } from '../store/shop-store';
import { agreeOn } from './agreed';
import { oldestFirst } from './oldest-first';
import { held, keepLeftBehind, TRY_AGAIN } from './saving';
import { leaveStoredShop, loading, parts, shop, tellUnread } from './shop';
import { showSummaries, summaries } from './summaries';

/** Reads the shop and the parts from the database. */
export async function openShop(): Promise<void> {
  try {
    await keepLeftBehind();
    const [stored, loaded, summed] = await Promise.all([loadShop(), loadParts(), loadSummaries()]);
    // What has been unsettled before the database answered stays so.
    for (const summary of summed.records) agreeOn(summary);
    showSummaries(summed.records.filter(({ part }) => !summaries.peek().has(part)));
    const [own] = held(stored.records, (record) => record.kind === 'shop');
    if (own !== undefined) shop.value = own;
    leaveStoredShop(stored.unread.some(({ reason }) => reason === 'newer'));
    // A part begun before the database answered must not be lost from the list.
    const before = parts.value;
    const others = loaded.records.filter(({ id }) => !before.has(id));
    const all = held(
      others,
      (record): record is PartRecord => record.kind === 'part' && !before.has(record.id),
    );
    const byAge = oldestFirst(all);
    parts.value = new Map([...byAge.map((part) => [part.id, part] as const), ...before]);
    tellUnread([...stored.unread, ...loaded.unread]);
    loading.value = 'ready';
  } catch (error) {
    console.error(error);
    loading.value = 'failed';
    setTimeout(() => void openShop(), TRY_AGAIN);
  }
}
