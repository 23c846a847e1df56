import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect } from 'preact/hooks';
import { fieldToGoBackTo, forgetPlace, notePlace } from '../../state/place-left';
import type { InspectionRecord } from '../../store/records';
import { isFocusNowhere } from '../../widgets/arrival';
import { typeWhatCameEarly } from '../../widgets/gauge-cable';
import {
  goBackTo,
  goToFirstEmpty,
  hasOwnKeypad,
  isNumberField,
  labelOf,
} from '../../widgets/number-fields';
import { to } from '../paths';

/**
 * Notes in which field somebody is. Goes to the field that was left when the app was closed, or else to
 * the first empty one, once all fields are there: unless somebody has gone on by then, or there is
 * something `toBeSeen` first that the keypad would lie over, or the address names what to come to.
 */
export function useKeptPlace(
  readings: RefObject<HTMLElement | null>,
  { part, id, closed }: InspectionRecord,
  areThere: boolean,
  toBeSeen: boolean,
): void {
  const address = to.plate(part, id);
  useLayoutEffect(() => {
    const root = readings.current;
    if (root === null) return;
    const note = ({ target }: FocusEvent) => {
      if (!isNumberField(target)) return;
      notePlace({ part, address, what: labelOf(target), field: target.id });
      // A reload leads back to the field then, and no longer to what the address named.
      if (location.hash !== '') history.replaceState(history.state, '', address);
    };
    root.addEventListener('focusin', note);
    return () => root.removeEventListener('focusin', note);
  }, [readings, part, address]);

  useLayoutEffect(() => {
    const root = readings.current;
    if (root === null || !areThere) return;
    // Whoever was quicker than this is left where they are.
    if (isFree() && location.hash === '') {
      const left = document.getElementById(fieldToGoBackTo(address) ?? '');
      if (isNumberField(left) && root.contains(left)) goBackTo(left);
      else if (!(toBeSeen && hasOwnKeypad())) goToFirstEmpty(root);
    }
    typeWhatCameEarly();
  }, [readings, address, areThere]);

  useEffect(() => {
    if (closed !== undefined) forgetPlace(address);
  }, [closed, address]);
}

/** True while nobody has gone to anything: the focus is nowhere, or at the contents, where a screen puts it. */
function isFree(): boolean {
  return isFocusNowhere() || document.activeElement?.matches('main') === true;
}
