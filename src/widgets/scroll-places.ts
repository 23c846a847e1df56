/*
 * Back and forward return to where one had scrolled to. The browser's own way back is too early: what
 * a screen shows comes from the database, so that it is short at first.
 */

/** How far down the page was, px, by the entry of the browser's history. */
const places = new Map<string, number>();

/** The entry that is being shown, and its address. */
let entry = '';
let address = '';

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
  // While there is hardly anything on the page: the first screen takes long enough to be drawn.
  arriveAtEntry();
}

/** To be told each time that the address has changed, before another screen is drawn. */
export function arriveAtEntry(): void {
  stop?.();
  const known: unknown = history.state?.entry;
  const before = address;
  address = location.pathname + location.search;
  if (typeof known === 'string') {
    entry = known;
    const place = places.get(entry);
    if (place !== undefined) keepTo(() => place);
    return;
  }
  entry = crypto.randomUUID();
  history.replaceState({ ...history.state, entry, before }, '');
  // The router knows it only of links: a button's own click hides from it that it led on.
  scrollTo({ top: 0, behavior: 'instant' });
  if (location.hash !== '') keepTo(() => placeOf(location.hash.slice(1)));
}

/** True where the browser's way back leads to the address `to`: then it leads to where one was there, too. */
export function isBefore(to: string): boolean {
  return history.state?.before === to;
}

/** Shows `part` of the page from its top, and keeps it there while what stands above it still grows. */
export function goToPart(part: HTMLElement): void {
  stop?.();
  part.scrollIntoView({ behavior: 'instant' });
  // At a desk it stays in sight by itself, and scrolls within itself.
  part.scrollTo({ top: 0, behavior: 'instant' });
  if (getComputedStyle(part).position !== 'sticky') keepTo(() => topOf(part));
}

/** How far down what an address names is, px; undefined while it is not drawn yet. */
function placeOf(id: string): number | undefined {
  const named = document.getElementById(id);
  return named === null ? undefined : topOf(named);
}

function topOf(part: HTMLElement): number {
  const top = scrollY + part.getBoundingClientRect().top;
  // The band grows with what it says.
  const band = document.querySelector('.band')?.getBoundingClientRect().bottom ?? 0;
  return top - Math.max(Number.parseFloat(getComputedStyle(part).scrollMarginTop), band);
}

/** Scrolls down to the place as soon as the page is long enough, and as it grows, unless somebody scrolls or types first. */
function keepTo(placeNow: () => number | undefined): void {
  const growth = new ResizeObserver(() => {
    const place = placeNow();
    if (place === undefined || isTyping()) return;
    const isLongEnough = document.documentElement.scrollHeight - innerHeight >= place;
    if (!isLongEnough) return;
    scrollTo({ top: place, behavior: 'instant' });
    places.set(entry, place);
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
