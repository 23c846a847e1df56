/*
 * Back and forward return to where one had scrolled to. The browser's own way back is too early: what
 * a screen shows comes from the database, so that it is short at first.
 */

/** How far down the page was, px, by the entry of the browser's history. */
const places = new Map<string, number>();

/** The entry that is being shown. */
let entry = '';

/** Ends the way back to a place; undefined while there is none going on. */
let stop: (() => void) | undefined;

/** So long may a screen take to grow to where it was, ms. */
const PATIENCE = 3000;

/** What says that somebody is about to scroll by hand. */
const BY_HAND = ['pointerdown', 'wheel', 'touchstart', 'keydown'] as const;

/** Notes from now on where the page is. */
export function noteScrollPlaces(): void {
  // The browser would scroll the screen that is left. A reload is for it: so it is told when the page goes.
  history.scrollRestoration = 'manual';
  addEventListener('pagehide', () => {
    history.scrollRestoration = 'auto';
  });
  addEventListener('scroll', () => {
    if (stop === undefined) places.set(entry, scrollY);
  });
}

/** To be told each time that the address has changed, before another screen is drawn. */
export function arriveAtEntry(): void {
  stop?.();
  const known: unknown = history.state?.entry;
  if (typeof known === 'string') {
    entry = known;
    goTo(places.get(entry));
  } else {
    entry = crypto.randomUUID();
    history.replaceState({ ...history.state, entry }, '');
    // The router knows it only of links: a button's own click hides from it that it led on.
    scrollTo({ top: 0, behavior: 'instant' });
  }
}

/** Scrolls down to `place` as soon as the page is long enough, unless somebody scrolls or types first. */
function goTo(place: number | undefined): void {
  if (place === undefined) return;
  const growth = new ResizeObserver(() => {
    const isLongEnough = document.documentElement.scrollHeight - innerHeight >= place;
    if (isLongEnough && !isTyping()) scrollTo({ top: place, behavior: 'instant' });
  });
  growth.observe(document.body);
  const end = new AbortController();
  const timer = setTimeout(() => stop?.(), PATIENCE);
  stop = () => {
    stop = undefined;
    clearTimeout(timer);
    growth.disconnect();
    end.abort();
  };
  for (const kind of BY_HAND) addEventListener(kind, stop, end);
}

/** The plate screen goes by itself to the field that was left. */
function isTyping(): boolean {
  return document.activeElement instanceof HTMLInputElement;
}
