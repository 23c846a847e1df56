import { lastRemoved, putBackPart } from '../../state/shelves';
import { parts } from '../../state/shop';

/** Says what has just been removed, with the way to have it back. */
export function Removed() {
  const part = parts.value.get(lastRemoved.value ?? '');
  if (part === undefined) return null;
  return (
    <p class="note" role="status">
      {part.entry.name.trim() || 'The part'} is removed.{' '}
      <button type="button" class="button" onClick={() => putBackPart(part)}>
        Put it back
      </button>
    </p>
  );
}
