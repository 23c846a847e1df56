import { focusNextToFill, goToNext, isNumberField, typeInto } from './number-fields';

/*
 * The cable of a gauge acts as a keyboard: it types the digits, faster than any hand, and ends with
 * Enter, with Enter twice (carriage return and line feed) or with Tab.
 */

/** Keys that come closer together than this come from a cable, ms. */
const FASTER_THAN_HANDS = 30;

const IN_A_NUMBER = /^[0-9.,+\-−]$/;

let last: { readonly key: string; readonly at: number } = { key: '', at: Number.NEGATIVE_INFINITY };

/** What a key in a number field asks for. */
export function keyAsks(event: KeyboardEvent): 'to go on' | 'nothing' | 'the usual' {
  const { key, timeStamp: at } = event;
  const fast = at - last.at < FASTER_THAN_HANDS;
  const ended = fast && (last.key === 'Enter' || last.key === 'Tab');
  last = { key, at };
  if (key === 'Enter') return ended ? 'nothing' : 'to go on';
  // By hand Tab goes to whatever comes next. A cable means the next reading.
  return key === 'Tab' && fast && !ended && !event.shiftKey ? 'to go on' : 'the usual';
}

/** What was typed before there was a field for it, while the app starts. */
let early: { readonly keys: readonly string[]; readonly at: number } = { keys: [], at: 0 };

/** So much is kept of it, a few readings, and so long, in ms: later it belongs to nothing any more. */
const MOST_EARLY = 60;
const LONGEST_EARLY = 10_000;

/**
 * From now on digits that are typed anywhere but in a field go to the next field to be filled. They
 * wait for it while the app starts; a tap says that they were not meant for what comes then.
 */
export function listenToGauge(): void {
  document.addEventListener('keydown', takeIn);
  document.addEventListener('pointerdown', forget);
}

function forget(): void {
  early = { keys: [], at: 0 };
}

function takeIn(event: KeyboardEvent): void {
  const { key, ctrlKey, metaKey, altKey, target, timeStamp: at } = event;
  if (ctrlKey || metaKey || altKey || takesKeys(target)) return;
  const keys = at - early.at < LONGEST_EARLY ? early.keys : [];
  const begun = keys.length > 0 && !isEnd(keys.at(-1));
  if (isEnd(key) && !event.shiftKey) {
    // However slowly it comes: two readings must not run into one. A second Enter ends nothing more.
    if (begun) keepEarly([...keys, key], at);
    if (begun || at - early.at < FASTER_THAN_HANDS) event.preventDefault();
  } else if (begun && key === 'Backspace') {
    keepEarly(keys.slice(0, -1), at);
  } else if (begun ? key.length === 1 : IN_A_NUMBER.test(key)) {
    // With the focus in the field, the key that is being pressed is typed there, after those before it.
    if (focusNextToFill(target)) typeWhatCameEarly();
    else keepEarly([...keys, key], at);
  }
}

function isEnd(key: string | undefined): boolean {
  return key === 'Enter' || key === 'Tab';
}

function keepEarly(keys: readonly string[], at: number): void {
  early = { keys: keys.slice(0, MOST_EARLY), at };
}

function takesKeys(target: unknown): boolean {
  return (
    target instanceof HTMLSelectElement ||
    target instanceof HTMLTextAreaElement ||
    (target instanceof HTMLInputElement && ['text', 'search'].includes(target.type))
  );
}

/** Types what came before there was a field, from the one that has the focus on. */
export function typeWhatCameEarly(): void {
  const { keys, at } = early;
  forget();
  if (performance.now() - at > LONGEST_EARLY) return;
  for (const key of keys) {
    const field = document.activeElement;
    if (!isNumberField(field)) return;
    if (isEnd(key)) goToNext(field);
    else typeInto(field, key);
  }
}
