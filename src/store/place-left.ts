/** Where somebody was when the app was left: enough to bring them back to the same field. */
export interface PlaceLeft {
  /** Id of the part. */
  readonly part: string;
  /** Address of the screen. */
  readonly address: string;
  /** What was in hand there, as the screen calls it: 'Left side'. */
  readonly what: string;
  /** Id of the field that had the focus. */
  readonly field?: string;
}

const NAME = 'highedge place';

/** The place that was kept last; undefined where there is none, or the browser refuses to tell. */
export function keptPlace(): PlaceLeft | undefined {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(NAME) ?? 'null');
    return isPlace(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps the place, or forgets the one that was kept. It is a convenience: where it cannot be kept nothing is lost. */
export function keepPlace(place: PlaceLeft | undefined): void {
  try {
    if (place === undefined) localStorage.removeItem(NAME);
    else localStorage.setItem(NAME, JSON.stringify(place));
  } catch {
    // Full or refused: the way back is a few taps longer.
  }
}

function isPlace(kept: unknown): kept is PlaceLeft {
  if (typeof kept !== 'object' || kept === null) return false;
  const { part, address, what, field } = kept as Record<string, unknown>;
  return (
    [part, address, what].every((text) => typeof text === 'string') &&
    (field === undefined || typeof field === 'string')
  );
}
