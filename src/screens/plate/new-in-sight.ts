import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { SetupEntry } from '../../entry/setup-entry';
import { goToFirstEmpty } from '../../widgets/number-fields';

/** Goes to the first empty field of the sheet that has just been added, or that something was added to, or to what brings its fields. */
export function useNewInSight(
  root: RefObject<HTMLElement | null>,
  setups: readonly SetupEntry[],
): void {
  const before = useRef(setups);
  // With what is drawn, not after it: by then one may have gone on to a field, and would be taken away from it.
  useLayoutEffect(() => {
    const known = new Set(before.current.flatMap(idsIn));
    before.current = setups;
    const grown = setups.findIndex((setup) => idsIn(setup).some((id) => !known.has(id)));
    const sheet = root.current?.querySelectorAll<HTMLElement>('.setup')[grown];
    if (sheet === undefined) return;
    if (!known.has(setups[grown]?.id ?? '')) sheet.scrollIntoView();
    goToFirstEmpty(sheet);
    // One that has no fields yet begins with a choice.
    if (!sheet.contains(document.activeElement)) {
      sheet.querySelector<HTMLElement>('[data-leads-on]')?.focus({ preventScroll: true });
    }
  }, [root, setups]);
}

/** Ids of a setup and of its placings, heights and places. */
function idsIn(setup: SetupEntry): readonly string[] {
  const rows = 'places' in setup ? setup.places : 'placings' in setup ? setup.placings : [];
  const heights = setup.kind === 'column' ? setup.heights : [];
  return [setup, ...rows, ...heights].map(({ id }) => id);
}
