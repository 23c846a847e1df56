import { setTimeout as pause } from 'node:timers/promises';
import type { Page } from '@playwright/test';

/** What the two fields hold. */
export interface Typed {
  readonly right: string;
  readonly left: string;
}

type Side = keyof Typed;

const LABELS = { right: 'Right side', left: 'Left side' } as const;

/** Keystrokes that nobody types before the browser is killed. */
const MANY = 1000;

export async function typedIn(page: Page): Promise<Typed> {
  return {
    right: await field(page, 'right').inputValue(),
    left: await field(page, 'left').inputValue(),
  };
}

function field(page: Page, side: Side) {
  return page.getByRole('textbox', { name: LABELS[side], exact: true });
}

interface Stroke {
  readonly side: Side;
  readonly key: string;
  /** What the fields hold after it. */
  readonly typed: Typed;
}

/** What was lost of the keystrokes that the page had handled. */
export interface Missing {
  readonly count: number;
  /** How long before the end the oldest of them had been handled, ms. */
  readonly age: number;
}

/** Types readings into the two fields by turns until the page is gone, and knows what it typed. */
export class Typist {
  readonly #before: Typed;
  readonly #strokes: readonly Stroke[];
  /** When each keystroke had been handled by the page, in order. */
  readonly #handledAt: number[] = [];

  /** Readings from `first` on, each a number more than the last, so that no two are alike. */
  constructor(before: Typed, first: number) {
    this.#before = before;
    this.#strokes = strokesFrom(before, first);
  }

  /** How many keystrokes the page has handled by now. */
  get handled(): number {
    return this.#handledAt.length;
  }

  /** Types with `gap` ms between the keystrokes, none of which is sent before the page has handled the last. */
  async typeUntilGone(page: Page, gap: () => number): Promise<void> {
    try {
      for (const { side, key, typed } of this.#strokes) {
        if (typed[side] === key) await takeUp(page, side);
        await page.keyboard.down(key);
        this.#handledAt.push(performance.now());
        await page.keyboard.up(key);
        await pause(gap());
      }
    } catch {
      // Killed under the hands.
    }
  }

  /** What is missing of the first `handled` keystrokes at `end` where `found` came back. The one under way may have come through. */
  missing(found: Typed, handled: number, end: number): Missing {
    const known = [this.#before, ...this.#strokes.slice(0, handled + 1).map(({ typed }) => typed)];
    const last = known.findLastIndex(
      ({ right, left }) => right === found.right && left === found.left,
    );
    if (last === -1) throw new Error(`What came back was never typed: ${JSON.stringify(found)}`);
    const count = Math.max(0, handled - last);
    const oldest = this.#handledAt[last];
    return { count, age: count === 0 || oldest === undefined ? 0 : end - oldest };
  }
}

/** Puts the cursor into a field and marks what stands there, for the next key to replace. */
async function takeUp(page: Page, side: Side): Promise<void> {
  await field(page, side).focus();
  await page.keyboard.press('ControlOrMeta+a');
}

function strokesFrom(before: Typed, first: number): readonly Stroke[] {
  const strokes: Stroke[] = [];
  let typed = before;
  for (let number = first; strokes.length < MANY; number += 1) {
    for (const side of ['right', 'left'] as const) {
      const keys = [...`${number}.5`];
      for (const [index, key] of keys.entries()) {
        typed = { ...typed, [side]: keys.slice(0, index + 1).join('') };
        strokes.push({ side, key, typed });
      }
    }
  }
  return strokes;
}
