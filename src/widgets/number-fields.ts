import { bringInSight } from './field-in-sight';
import { goOnAfter } from './going-on';

/** Sent by the last number field when there is no next one to go to; cancelled by what leads on itself. */
export const ENTRY_DONE = 'entry-done';

/** Sent by a number field where the last change is to be taken back. */
export const TAKE_BACK = 'take-back';

/** Asked by every field each time it is drawn, and slow to be made. */
let fingers: MediaQueryList | undefined;

/** True where fingers do the typing: there the app's own keypad stands in for the system's. */
export function hasOwnKeypad(): boolean {
  fingers ??= matchMedia('(pointer: coarse)');
  return fingers.matches;
}

function numberFields(): readonly HTMLInputElement[] {
  const all = document.querySelectorAll<HTMLInputElement>('input[data-number]:not(:disabled)');
  return [...all].filter((input) => input.offsetParent !== null);
}

/**
 * The field to go to after `from`: the next one that is still empty or marked as wrong, so that heights
 * and places that stand already are passed by, and then the first that was left so before it.
 */
function nextToFill(from: HTMLInputElement): HTMLInputElement | undefined {
  const fields = numberFields();
  const at = fields.indexOf(from);
  const onward = fields.slice(at + 1).find((input) => isUnfinished(input) || isAsked(input));
  return onward ?? fields.slice(0, at).find(isUnfinished);
}

function isToFill(input: HTMLInputElement): boolean {
  return input.dataset.number === 'needed' && input.value.trim() === '';
}

function isUnfinished(input: HTMLInputElement): boolean {
  return isToFill(input) || isMarked(input);
}

/** True for one that may stay empty, and is not to be passed by unseen. */
function isAsked(input: HTMLInputElement): boolean {
  return input.dataset.number === 'asked' && input.value.trim() === '';
}

function isMarked(input: HTMLInputElement): boolean {
  return input.ariaInvalid === 'true';
}

/** True where no field but `input` is still to be filled or put right. */
export function isLast(input: HTMLInputElement): boolean {
  return nextToFill(input) === undefined;
}

/**
 * Goes on to the next field to fill or to put right; with none left the entry is done. The last one is
 * not left while it is marked itself.
 */
export function goToNext(from: HTMLInputElement): void {
  const next = nextToFill(from) ?? (isMarked(from) ? from : undefined);
  if (next === undefined) {
    from.blur();
    noteLeft(from);
    const done = new CustomEvent(ENTRY_DONE, { bubbles: true, cancelable: true });
    if (from.dispatchEvent(done)) goOnAfter(from);
  } else {
    focusField(next);
  }
}

/** The last field, until the next key or tap after it was left. */
let justLeft: HTMLInputElement | undefined;

function noteLeft(field: HTMLInputElement): void {
  justLeft = field;
  const goneOn = new AbortController();
  const goOn = (event: Event) => {
    // A cable may end with Enter twice.
    if (event instanceof KeyboardEvent && event.key === 'Enter') return;
    justLeft = undefined;
    goneOn.abort();
  };
  for (const byHand of ['keydown', 'pointerdown']) {
    document.addEventListener(byHand, goOn, { capture: true, signal: goneOn.signal });
  }
}

/** Goes back to a field that was marked only after it was left as the last: a cable is faster than the mark. */
export function comeBackIfMarked(input: HTMLInputElement): void {
  if (input === justLeft && isMarked(input)) focusField(input);
}

/**
 * Goes to the next field to be filled after `from`, or to the first of all.
 *
 * @returns false where there is none.
 */
export function focusNextToFill(from: EventTarget | null): boolean {
  const toFill = numberFields().filter(isToFill);
  const follows = (input: HTMLInputElement) =>
    from instanceof Node &&
    (from.compareDocumentPosition(input) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
  const next = toFill.find(follows) ?? toFill[0];
  if (next !== undefined) focusField(next);
  return next !== undefined;
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
  bringInSight(input);
}

/** What the number fields within `root` hold, by their ids. */
export function heldWithin(root: HTMLElement): ReadonlyMap<string, string> {
  const fields = numberFields().filter((input) => root.contains(input));
  return new Map(fields.map(({ id, value }) => [id, value]));
}

/**
 * Goes to the first number field within `root` that does not hold what it held `before`, if there is
 * one: what stands in it again is whole, and to be typed over.
 */
export function goToChanged(root: HTMLElement, before: ReadonlyMap<string, string>): void {
  const changed = numberFields().find(
    (input) => root.contains(input) && input.value !== before.get(input.id),
  );
  if (changed !== undefined) focusField(changed);
}

/** The id in the page of the number field with the key `field`. */
export function idOf(field: string): string {
  return `field ${field}`.replaceAll(' ', '-');
}

/** Goes to the number field with the key `field`, what stands in it to be typed over. */
export function goToField(field: string): void {
  const input = document.getElementById(idOf(field));
  if (isNumberField(input)) focusField(input);
}

/** Goes to the first number field whose text cannot be taken: false where there is none. */
export function goToMarked(): boolean {
  const marked = numberFields().find(isMarked);
  if (marked !== undefined) focusField(marked);
  return marked !== undefined;
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
  bringInSight(input);
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

/** Types `text` after all that stands in the field, also where that was to be typed over. */
export function typeAfter(input: HTMLInputElement, text: string): void {
  input.setSelectionRange(input.value.length, input.value.length);
  typeInto(input, text);
}

/** Types `text` in place of all that stands in the field. */
export function typeAnew(input: HTMLInputElement, text: string): void {
  input.select();
  typeInto(input, text);
}

/** What was typed last before `input` in a field of its kind and unit, if anything was. */
export function valueBefore(input: HTMLInputElement): string | undefined {
  const { kind, unit } = input.dataset;
  const fields = numberFields();
  const before = fields
    .slice(0, fields.indexOf(input))
    .findLast(
      ({ dataset, value }) => dataset.kind === kind && dataset.unit === unit && value !== '',
    );
  return before?.value;
}

/** True for a length: it may be typed with a unit, or as a sum. */
export function takesUnits(input: HTMLInputElement): boolean {
  return input.dataset.unit !== undefined;
}

/** True where the last change can be taken back. */
export function takesBack(input: HTMLInputElement): boolean {
  return input.closest('[data-takes-back]') !== null;
}

export function askToTakeBack(input: HTMLInputElement): void {
  input.dispatchEvent(new CustomEvent(TAKE_BACK, { bubbles: true }));
}

function announce(input: HTMLInputElement): void {
  input.dispatchEvent(new InputEvent('input', { bubbles: true }));
}
