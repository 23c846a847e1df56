import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';

/** False until a screen has been shown: the first one is announced by the browser itself. */
let shownBefore = false;

/**
 * Says to all where one has come to: the title of the page, and the focus at the heading, unless the
 * screen has put it in a field by itself.
 */
export function useArrival(title: string, heading: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    document.title = title === 'Highedge' ? title : `${title} – Highedge`;
  }, [title]);
  useEffect(() => {
    if (shownBefore && isFocusNowhere()) heading.current?.focus({ preventScroll: true });
    shownBefore = true;
  }, [heading]);
}

/** True while nothing on the page has the focus. */
export function isFocusNowhere(): boolean {
  const { activeElement, body } = document;
  return activeElement === null || activeElement === body;
}
