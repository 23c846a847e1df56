/** Sent by the last number field when there is no next one to go to. */
export const ENTRY_DONE = 'entry-done';

/** True where fingers do the typing: there the app's own keypad stands in for the system's. */
export function hasOwnKeypad(): boolean {
  return matchMedia('(pointer: coarse)').matches;
}

function numberFields(): readonly HTMLInputElement[] {
  const all = document.querySelectorAll<HTMLInputElement>('input[data-number]:not(:disabled)');
  return [...all].filter((input) => input.offsetParent !== null);
}

/**
 * The field that is to be filled after `from`: the next one that is still empty, so that heights
 * and places that stand already are passed by.
 */
function nextToFill(from: HTMLInputElement): HTMLInputElement | undefined {
  const fields = numberFields();
  return fields.slice(fields.indexOf(from) + 1).find(isToFill);
}

function isToFill(input: HTMLInputElement): boolean {
  return input.dataset.number === 'needed' && input.value.trim() === '';
}

/** True where no field after `input` is still to be filled. */
export function isLast(input: HTMLInputElement): boolean {
  return nextToFill(input) === undefined;
}

/** Goes on to the next field to fill; after the last one the entry is done. */
export function goToNext(from: HTMLInputElement): void {
  const next = nextToFill(from);
  if (next === undefined) {
    from.blur();
    from.dispatchEvent(new CustomEvent(ENTRY_DONE, { bubbles: true }));
  } else {
    focusField(next);
  }
}

/** Goes to the first number field within `root` that is still empty, if there is one. */
export function goToFirstEmpty(root: HTMLElement): void {
  const empty = numberFields().find((input) => root.contains(input) && isToFill(input));
  if (empty !== undefined) focusField(empty);
}

/** Goes back to a field that was left, with the caret after what stands in it, to be gone on with. */
export function goBackTo(input: HTMLInputElement): void {
  input.focus({ preventScroll: true });
  input.setSelectionRange(input.value.length, input.value.length);
  input.scrollIntoView({ block: 'center' });
}

/** True for a field that takes a number. */
export function isNumberField(target: unknown): target is HTMLInputElement {
  return target instanceof HTMLInputElement && target.dataset.number !== undefined;
}

/** What a field is called on the screen. */
export function labelOf(input: HTMLInputElement): string {
  return input.labels?.[0]?.textContent ?? '';
}

function focusField(input: HTMLInputElement): void {
  input.focus({ preventScroll: true });
  input.select();
  input.scrollIntoView({ block: 'center' });
}

/** Types `text` at the caret, as a key would. */
export function typeInto(input: HTMLInputElement, text: string): void {
  const { start, end } = selectionOf(input);
  input.setRangeText(text, start, end, 'end');
  announce(input);
}

/** Takes away what is selected, or the character before the caret. */
export function eraseFrom(input: HTMLInputElement): void {
  const { start, end } = selectionOf(input);
  input.setRangeText('', start === end ? Math.max(0, start - 1) : start, end, 'end');
  announce(input);
}

/** Turns the sign round. A sign pressed before any digit is kept. */
export function turnSign(input: HTMLInputElement): void {
  const { value } = input;
  input.value = /^[-−]/.test(value) ? value.slice(1) : `-${value.replace(/^\+/, '')}`;
  announce(input);
}

function selectionOf(input: HTMLInputElement) {
  const end = input.value.length;
  return { start: input.selectionStart ?? end, end: input.selectionEnd ?? end };
}

function announce(input: HTMLInputElement): void {
  input.dispatchEvent(new InputEvent('input', { bubbles: true }));
}
