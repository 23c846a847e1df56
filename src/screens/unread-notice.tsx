import { parts } from '../state/shop';
import { type KeyParts, partsOfKey } from '../store/keys';
import type { Unread } from '../store/shop-store';

const WHAT: Readonly<Record<KeyParts['kind'], string>> = {
  part: 'The part',
  inspection: 'Readings of',
  work: 'Work on',
  version: 'An earlier version of',
  shop: 'Kit and settings',
  other: 'A record',
};

/** What could not be read, by name: each is left as it is, and the rest opens. */
export function UnreadNotice({ unread }: { readonly unread: readonly Unread[] }) {
  return (
    <div class="notice notice-wrong">
      <ul class="notice-list">
        {unread.map((one) => (
          <li key={one.key}>
            {nameOf(one)}: {wordsFor(one)}
          </li>
        ))}
      </ul>
    </div>
  );
}

function wordsFor({ key, reason }: Unread): string {
  if (reason === 'damaged') return 'damaged, and left untouched. The rest is here.';
  return partsOfKey(key).kind === 'shop'
    ? 'written by a newer version of the app. What is changed there now is not kept: update the app.'
    : 'written by a newer version of the app, and left untouched. Update the app to see it.';
}

function nameOf({ key, name }: Unread): string {
  const { kind, part } = partsOfKey(key);
  const ofPart = name ?? (part === undefined ? undefined : parts.value.get(part)?.entry.name);
  if (kind === 'shop' || kind === 'other') return WHAT[kind];
  return `${WHAT[kind]} ${ofPart?.trim() ? `‘${ofPart.trim()}’` : 'a part without a name'}`;
}
