/** Room between what names a field and the drawing above it, px. */
const GAP = 8;

/**
 * Keeps `field` above the keypad and under the band while what stands above it grows or shrinks; where
 * somebody has scrolled away from it, it is left alone.
 *
 * @returns what ends it.
 */
export function keepInSight(field: HTMLElement): () => void {
  const contents = field.closest('main') ?? document.body;
  // A smooth scroll of our own passes places where the field is not in sight: what counts is where it ends.
  const scrolled = 'onscrollend' in document ? 'scrollend' : 'scroll';
  let seen = true;
  let onTheWay = true;
  const look = () => {
    seen = isInSight(field);
    onTheWay = false;
  };
  const grown = new ResizeObserver(() => {
    placeDrawing(field);
    // A scroll that has begun goes to where the field was.
    if (onTheWay) bringInSight(field);
    else if (seen && !isInSight(field)) bringInSight(field, 'instant');
  });
  placeDrawing(field);
  bringInSight(field);
  grown.observe(contents);
  // The answer in it may grow by some lines as the field is typed in.
  const band = document.querySelector('.band');
  if (band !== null) grown.observe(band);
  document.addEventListener(scrolled, look, { passive: true });
  return () => {
    grown.disconnect();
    document.removeEventListener(scrolled, look);
  };
}

/** Scrolls `field` to under the drawing that it belongs to, so that what follows is seen too, or else to the middle of the room. */
export function bringInSight(field: HTMLElement, behavior: ScrollBehavior = 'auto'): void {
  if (document.querySelector('.keypad') === null) {
    field.scrollIntoView({ block: 'center', behavior });
    return;
  }
  const room = roomFor(field);
  const { top, bottom } = field.getBoundingClientRect();
  const by = room.underDrawing
    ? topOfName(field, bottom - (room.bottom - room.top)) - room.top - GAP
    : (top + bottom) / 2 - (room.top + room.bottom) / 2;
  scrollBy({ top: by, behavior });
}

/** Where the label of `field` begins, or the heading of its row where that is not above `highest`: half of it would be cut off. */
function topOfName(field: HTMLElement, highest: number): number {
  const legend = field.closest('fieldset')?.querySelector(':scope > legend');
  const { top } = labelled(field).getBoundingClientRect();
  const heading = legend?.getBoundingClientRect();
  const isOfRow = heading !== undefined && top - heading.bottom < heading.height;
  return isOfRow && heading.top - GAP >= highest ? heading.top : top;
}

/** Whether the whole of `field` is to be seen, and its label with it. */
function isInSight(field: HTMLElement): boolean {
  const { bottom } = field.getBoundingClientRect();
  const { top } = labelled(field).getBoundingClientRect();
  const room = roomFor(field);
  return top >= room.top && bottom <= room.bottom;
}

function labelled(field: HTMLElement): Element {
  return field.closest('.field') ?? field;
}

/** What is left for `field` between the band, or the drawing that stays under it, and the keypad. */
function roomFor(field: HTMLElement) {
  const drawing = drawingOf(field);
  const underDrawing = drawing !== null && getComputedStyle(drawing).position === 'sticky';
  const top = bandBottom() + (underDrawing ? drawing.getBoundingClientRect().height : 0);
  return { top, bottom: keypadTop(field), underDrawing };
}

/** Where the keypad begins; the foot of the screen where the keys are beside `field`, on a phone that lies on its side. */
function keypadTop(field: HTMLElement): number {
  const keypad = document.querySelector('.keypad')?.getBoundingClientRect();
  const isBelow = keypad !== undefined && keypad.left < field.getBoundingClientRect().right;
  return isBelow ? keypad.top : innerHeight;
}

/** The drawing that `field` belongs to. */
function drawingOf(field: HTMLElement): HTMLElement | null {
  return field.closest('.setup')?.querySelector<HTMLElement>(':scope > .tap-to-go') ?? null;
}

/** Where the band ends; the top of the screen where it goes with the page. */
function bandBottom(): number {
  const band = document.querySelector('.band');
  const stays = band !== null && getComputedStyle(band).position === 'sticky';
  return stays ? Math.max(0, band.getBoundingClientRect().bottom) : 0;
}

/**
 * The drawing stays in sight under the band, however high that is. Where the text is so large that `field`
 * and its name would have no room under it, it goes with the page.
 */
function placeDrawing(field: HTMLElement): void {
  const drawing = drawingOf(field);
  if (drawing === null) return;
  const under = bandBottom();
  const needed = field.getBoundingClientRect().bottom - labelled(field).getBoundingClientRect().top;
  const room = keypadTop(field) - under - drawing.getBoundingClientRect().height - GAP;
  drawing.style.top = `${under}px`;
  drawing.style.position = room < needed ? 'static' : '';
}
