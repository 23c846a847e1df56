import { goBackToPlace, placeLeft } from '../state/place-left';
import { parts } from '../state/shop';

/** After a call, a lock or an update: one tap back to the same field. */
export function GoOn() {
  const place = placeLeft.value;
  const part = place && parts.value.get(place.part);
  if (place === undefined || part === undefined || part.closed !== undefined) return null;
  return (
    <a class="button button-main button-wide" href={place.address} onClick={goBackToPlace}>
      Go on where you were: {part.entry.name.trim() || 'part without a name'}, {place.what}
    </a>
  );
}
