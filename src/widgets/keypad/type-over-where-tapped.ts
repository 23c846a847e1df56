import { hasOwnKeypad } from '../number-fields';
import { focusedNumberField } from './focused-number-field';

/**
 * What stands in a field that a tap has gone to is typed over, as on going to the next. It is
 * selected within the tap itself, never later: a digit may already have been typed then.
 *
 * @returns what ends it; undefined on a device where fingers do not do the typing.
 */
export function typeOverWhereTapped(): (() => void) | undefined {
  if (!hasOwnKeypad()) return undefined;
  let pressed: EventTarget | null = null;
  let arrived: HTMLInputElement | undefined;
  const onPress = ({ target }: Event) => {
    pressed = target;
    arrived = undefined;
  };
  const onFocus = () => {
    arrived = focusedNumberField();
  };
  // The tap puts its caret after the field has got the focus, and the click comes after both. Where
  // the pad has come up under the finger, the click is no longer the field's: what was pressed tells.
  const onClick = ({ target }: Event) => {
    if (arrived !== undefined && (arrived === pressed || arrived === target)) arrived.select();
    arrived = undefined;
  };
  document.addEventListener('pointerdown', onPress, { capture: true });
  document.addEventListener('focusin', onFocus);
  document.addEventListener('click', onClick, { capture: true });
  return () => {
    document.removeEventListener('pointerdown', onPress, { capture: true });
    document.removeEventListener('focusin', onFocus);
    document.removeEventListener('click', onClick, { capture: true });
  };
}
