import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';

/** False until a screen has been shown: the first one is announced by the browser itself. */
let shownBefore = false;

/**
 * Says to all where one has come to: the title of the page, and the focus at the contents, which are named
 * by the heading, so that the next Tab leads to the first thing to do; unless the screen has put it in a
 * field by itself.
 */
export function useArrival(title: string, contents: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    document.title = title === 'Highedge' ? title : `${title} – Highedge`;
  }, [title]);
  useEffect(() => {
    if (shownBefore && isFocusNowhere()) contents.current?.focus({ preventScroll: true });
    shownBefore = true;
  }, [contents]);
}

/** True while nothing on the page has the focus. */
export function isFocusNowhere(): boolean {
  const { activeElement, body } = document;
  return activeElement === null || activeElement === body;
}
