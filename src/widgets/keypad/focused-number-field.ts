import { useEffect, useState } from 'preact/hooks';
import { hasOwnKeypad, isNumberField } from '../number-fields';

/** The number field that has the focus, on a device where fingers do the typing. */
export function useFocusedNumberField(): HTMLInputElement | undefined {
  const [field, setField] = useState<HTMLInputElement>();
  useEffect(() => {
    if (!hasOwnKeypad()) return;
    const look = () => setField(focusedNumberField());
    // The focus has moved only once this turn is over.
    const lookLater = () => setTimeout(look);
    look();
    document.addEventListener('focusin', look);
    document.addEventListener('focusout', lookLater);
    return () => {
      document.removeEventListener('focusin', look);
      document.removeEventListener('focusout', lookLater);
    };
  }, []);
  return field;
}

/** The field that has the focus, where it is one for a number. */
export function focusedNumberField(): HTMLInputElement | undefined {
  const focused = document.activeElement;
  return isNumberField(focused) ? focused : undefined;
}
