import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';
import { fieldToGoBackTo, forgetPlace, notePlace } from '../../state/place-left';
import type { InspectionRecord } from '../../store/records';
import { typeWhatCameEarly } from '../../widgets/gauge-cable';
import { goBackTo, goToFirstEmpty, isNumberField, labelOf } from '../../widgets/number-fields';
import { to } from '../paths';

/**
 * Goes to the field that was left when the app was closed, or else to the first empty one, and notes
 * from then on in which field somebody is.
 */
export function useKeptPlace(
  readings: RefObject<HTMLElement | null>,
  { part, id, closed }: InspectionRecord,
): void {
  const address = to.plate(part, id);
  useEffect(() => {
    const root = readings.current;
    if (root === null) return;
    const note = ({ target }: Pick<FocusEvent, 'target'>) => {
      if (!isNumberField(target)) return;
      notePlace({ part, address, what: labelOf(target), field: target.id });
    };
    root.addEventListener('focusin', note);
    const left = document.getElementById(fieldToGoBackTo(address) ?? '');
    const here = document.activeElement;
    // Whoever was quicker than this is left where they are.
    if (isNumberField(here) && root.contains(here)) note({ target: here });
    else if (isNumberField(left) && root.contains(left)) goBackTo(left);
    else goToFirstEmpty(root);
    typeWhatCameEarly();
    return () => root.removeEventListener('focusin', note);
  }, [readings, part, address]);

  useEffect(() => {
    if (closed !== undefined) forgetPlace(address);
  }, [closed, address]);
}
