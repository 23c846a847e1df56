import { useState } from 'preact/hooks';

/** Counts how often all that was typed has been let go of. */
let lettings = 0;

/** Lets every field hold what the page says from now on: what was typed is taken back. */
export function letGoOfTyping(): void {
  lettings += 1;
}

/** What has been typed into a field, as far as the page has not come to it yet. */
export class Typing {
  /** The oldest first. */
  #ahead: readonly string[] = [];
  /** What the page said last. */
  #said: string | undefined;
  #lettings = lettings;

  /** Something was typed: the field now holds `text`. */
  note(text: string): void {
    this.#ahead = [...this.#ahead, text];
  }

  /**
   * What the field is to hold where the page says `text`: that may be what was typed a moment ago,
   * and must not take back what has been typed since. A text that was never typed is another's doing,
   * such as other units, and goes.
   */
  heldAt(text: string): string {
    if (this.#lettings !== lettings) {
      this.#lettings = lettings;
      this.#ahead = [];
    }
    if (text !== this.#said) {
      const echo = this.#ahead.lastIndexOf(text);
      this.#ahead = echo === -1 ? [] : this.#ahead.slice(echo + 1);
      this.#said = text;
    }
    return this.#ahead.at(-1) ?? text;
  }
}

/** The text of a field that the page draws a moment after it was typed. */
export function useTyping(text: string): { readonly text: string; note(text: string): void } {
  const [typing] = useState(() => new Typing());
  return { text: typing.heldAt(text), note: (typed) => typing.note(typed) };
}
