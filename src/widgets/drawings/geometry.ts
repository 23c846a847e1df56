/**
 * Sizes and positions on a drawing. A drawing is as wide as its place on the screen and has 340 units of
 * its own across, so that a unit is about a pixel on a phone; y runs down.
 */
export const DRAWING_WIDTH = 340;
/** Height of a line of text. */
export const LINE = 18;

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** `value` kept between two limits; what is no number becomes the lower one. */
export function clamp(value: number, low: number, high: number): number {
  return Number.isNaN(value) ? low : Math.max(low, Math.min(high, value));
}

/** A length that can be drawn: 1 in place of one that is not a positive number. */
export function drawable(length: number): number {
  return Number.isFinite(length) && length > 0 ? length : 1;
}

/** `value` where it is a number, else 0. */
export function finite(value: number): number {
  return Number.isFinite(value) ? value : 0;
}

interface Limits {
  readonly width: readonly [min: number, max: number];
  readonly height: readonly [min: number, max: number];
}

/** Width and height to draw a rectangle with: in its true proportion as far as the limits let it. */
export function fitted(width: number, height: number, limits: Limits) {
  const [w, h] = [drawable(width), drawable(height)];
  const scale = Math.min(limits.width[1] / w, limits.height[1] / h);
  return { width: clamp(w * scale, ...limits.width), height: clamp(h * scale, ...limits.height) };
}

/** Room that `text` needs, on the wide side: how wide letters are is up to the system's font. */
export function textWidth(text: string): number {
  return [...text].reduce((width, letter) => width + letterWidth(letter), 0);
}

function letterWidth(letter: string): number {
  if (/[mwMW]/.test(letter)) return 14.8;
  if (/[\sijlft.,:;'′″()]/.test(letter)) return 5.9;
  return /[A-Z±−+×]/.test(letter) ? 12.6 : 9.7;
}

/** The same for bold letters. */
export function boldWidth(text: string): number {
  return textWidth(text) * 1.12;
}

export function widest(texts: readonly string[]): number {
  return Math.max(0, ...texts.map(textWidth));
}

/** `text` in lines no wider than `width`, broken at spaces. */
export function wrapped(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && boldWidth(longer) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** A coordinate as an attribute. */
export function at(value: number): number {
  return Math.round(finite(value) * 10) / 10;
}

/** The points as the `d` of a closed path. */
export function outline(points: readonly Point[]): string {
  return `M${points.map(({ x, y }) => `${at(x)} ${at(y)}`).join('L')}Z`;
}
