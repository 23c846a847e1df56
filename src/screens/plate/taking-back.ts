import type { RefObject } from 'preact';
import { useCallback, useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { undo } from '../../state/plate-changes';
import type { InspectionRecord } from '../../store/records';
import { goToChanged, heldWithin, TAKE_BACK } from '../../widgets/number-fields';
import { letGoOfTyping } from '../../widgets/typing';

/**
 * Takes the last change back by the key of the keypad, by Ctrl+Z, or by what is returned, and goes to
 * the field that it was in.
 */
export function useTakingBack(
  readings: RefObject<HTMLElement | null>,
  inspection: InspectionRecord,
): () => void {
  const before = useRef<ReadonlyMap<string, string>>(undefined);
  const now = useRef(inspection);
  now.current = inspection;
  const takeBack = useCallback(() => {
    if (readings.current === null) return;
    before.current = heldWithin(readings.current);
    letGoOfTyping();
    undo(now.current);
  }, [readings]);

  useEffect(() => {
    const root = readings.current;
    document.addEventListener('keydown', onKey);
    root?.addEventListener(TAKE_BACK, takeBack);
    return () => {
      document.removeEventListener('keydown', onKey);
      root?.removeEventListener(TAKE_BACK, takeBack);
    };
    function onKey(event: KeyboardEvent): void {
      if (!asksToTakeBack(event)) return;
      event.preventDefault();
      takeBack();
    }
  }, [readings, takeBack]);

  const { setups } = inspection;
  // As it is drawn: nobody has gone on to another field yet.
  useLayoutEffect(() => {
    const held = before.current;
    before.current = undefined;
    if (held !== undefined && readings.current !== null) goToChanged(readings.current, held);
  }, [readings, setups]);
  return takeBack;
}

/** Ctrl+Z, but not where words are typed: there it is the browser's own. */
function asksToTakeBack({ key, ctrlKey, metaKey, shiftKey, target }: KeyboardEvent): boolean {
  const inWords = target instanceof HTMLInputElement && target.dataset.number === undefined;
  return key.toLowerCase() === 'z' && (ctrlKey || metaKey) && !shiftKey && !inWords;
}
