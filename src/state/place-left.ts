import { signal } from '@preact/signals';
import { keepPlace, keptPlace, type PlaceLeft } from '../store/place-left';

/** Where somebody was last, on this device. */
export const placeLeft = signal<PlaceLeft | undefined>(keptPlace());

/** The place to be brought back to: at the start the one that the app was left at. */
let wanted = placeLeft.peek();

/** Notes where somebody is now. */
export function notePlace(place: PlaceLeft): void {
  placeLeft.value = place;
  keepPlace(place);
}

/** Nothing is left to do at `address`. */
export function forgetPlace(address: string): void {
  if (placeLeft.peek()?.address !== address) return;
  placeLeft.value = undefined;
  keepPlace(undefined);
}

/** The screen that opens next goes to the field that was left. */
export function goBackToPlace(): void {
  wanted = placeLeft.peek();
}

/** The field to go to on the screen at `address`, once: who comes by another way later is not taken there. */
export function fieldToGoBackTo(address: string): string | undefined {
  const { address: left, field } = wanted ?? {};
  wanted = undefined;
  return left === address ? field : undefined;
}
