import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { letGoOfTyping, Typing } from '../../src/widgets/typing';

function typed(...texts: readonly string[]): Typing {
  const typing = new Typing();
  for (const text of texts) typing.note(text);
  return typing;
}

describe('a field that is drawn a moment after it was typed into', () => {
  it('holds what was typed last, however late the page comes to what was before', () => {
    const typing = typed('-', '-3', '-34');
    expect(typing.heldAt('-')).toBe('-34');
    expect(typing.heldAt('-3')).toBe('-34');
    typing.note('-34,');
    expect(typing.heldAt('-34')).toBe('-34,');
    expect(typing.heldAt('-34,')).toBe('-34,');
  });

  it('may be drawn again with what the page said before, as often as one likes', () => {
    const typing = typed();
    expect(typing.heldAt('')).toBe('');
    typing.note('3');
    typing.note('34');
    expect([typing.heldAt(''), typing.heldAt('3'), typing.heldAt('3')]).toEqual(['34', '34', '34']);
    expect([typing.heldAt('34'), typing.heldAt('34')]).toEqual(['34', '34']);
  });

  it('never loses a key, whatever the page comes to, and when', () => {
    const keys = fc.array(fc.constantFrom('1', '2', 'erase'), { maxLength: 12 });
    fc.assert(
      fc.property(keys, fc.array(fc.nat({ max: 3 })), (pressed, pauses) => {
        const typing = new Typing();
        const texts = [''];
        let page = 0;
        let held = typing.heldAt('');
        pressed.forEach((key, index) => {
          // The page goes on by some of the texts that it has not come to, and is drawn.
          for (let step = pauses[index] ?? 0; step > 0; step -= 1) {
            page = Math.min(page + 1, texts.length - 1);
            held = typing.heldAt(texts[page]!);
          }
          held = key === 'erase' ? held.slice(0, -1) : held + key;
          texts.push(held);
          typing.note(held);
          held = typing.heldAt(texts[page]!);
          expect(held).toBe(texts.at(-1));
        });
      }),
    );
  });

  it('holds a text that came back by erasing', () => {
    const typing = typed('3', '34', '3');
    expect(typing.heldAt('3')).toBe('3');
    typing.note('35');
    expect(typing.heldAt('3')).toBe('35');
  });

  it('gives way to a text that nobody typed into it', () => {
    const typing = typed('25.4', '25.40');
    expect(typing.heldAt('1')).toBe('1');
    expect(typing.heldAt('25.4')).toBe('25.4');
  });

  it('holds what the page says once all that was typed is let go of, were it what it said before', () => {
    const typing = typed();
    typing.heldAt('');
    typing.note('34');
    expect(typing.heldAt('')).toBe('34');
    letGoOfTyping();
    expect(typing.heldAt('')).toBe('');
    typing.note('5');
    expect(typing.heldAt('')).toBe('5');
  });

  it('holds what the page says where nothing was typed', () => {
    expect(new Typing().heldAt('60')).toBe('60');
  });
});
