import { useEffect, useState } from 'preact/hooks';
import {
  eraseFrom,
  goToNext,
  hasOwnKeypad,
  isLast,
  isNumberField,
  turnSign,
  typeInto,
} from './number-fields';

const DIGITS = ['7', '8', '9', '4', '5', '6', '1', '2', '3'];

/**
 * Our own keypad: the system's has no minus on some phones. It shows while a number field has the
 * focus, and leaves the focus where it is.
 */
export function Keypad() {
  const field = useFocusedNumberField();
  useEffect(() => {
    document.documentElement.classList.toggle('keypad-open', field !== undefined);
    // The pad must not lie over the field.
    field?.scrollIntoView({ block: 'center' });
  }, [field]);
  if (field === undefined) return null;
  const digit = (text: string) => (
    <Key key={text} label={text} onPress={() => typeInto(field, text)} />
  );
  const next = isLast(field) ? 'Done' : 'Next';
  return (
    // A press on the pad must not take the focus from the field.
    <section class="keypad" aria-label="Keypad" onPointerDown={(e) => e.preventDefault()}>
      <div class="keypad-digits">
        {DIGITS.map(digit)}
        <Key label="±" name="Turn the sign" onPress={() => turnSign(field)} />
        {digit('0')}
        <Key label="." name="Decimal point" onPress={() => typeInto(field, '.')} />
      </div>
      <div class="keypad-side">
        <Key label="⌫" name="Erase" onPress={() => eraseFrom(field)} />
        <Key label={next} tall onPress={() => goToNext(field)} />
      </div>
    </section>
  );
}

interface KeyProps {
  readonly label: string;
  readonly name?: string;
  readonly tall?: boolean;
  readonly onPress: () => void;
}

function Key({ label, name, tall, onPress }: KeyProps) {
  return (
    <button
      type="button"
      class={tall ? 'key key-tall' : 'key'}
      aria-label={name}
      // Out of the order of focus: with a keyboard there is no need of it.
      tabIndex={-1}
      onClick={() => {
        onPress();
        feel();
      }}
    >
      {label}
    </button>
  );
}

/** A key is felt, on devices that can shake: oily fingers do not look twice. */
function feel(): void {
  navigator.vibrate?.(8);
}

/** The number field that has the focus, on a device where fingers do the typing. */
function useFocusedNumberField(): HTMLInputElement | undefined {
  const [field, setField] = useState<HTMLInputElement>();
  useEffect(() => {
    if (!hasOwnKeypad()) return;
    const look = () => setField(focusedNumberField());
    // The focus has moved only once this turn is over.
    const lookLater = () => setTimeout(look);
    look();
    document.addEventListener('focusin', look);
    document.addEventListener('focusout', lookLater);
    const endTypingOver = typeOverWhereTapped();
    return () => {
      document.removeEventListener('focusin', look);
      document.removeEventListener('focusout', lookLater);
      endTypingOver();
    };
  }, []);
  return field;
}

function focusedNumberField(): HTMLInputElement | undefined {
  const focused = document.activeElement;
  return isNumberField(focused) ? focused : undefined;
}

/**
 * What stands in a field that a tap has gone to is typed over, as on going to the next. It is
 * selected within the tap itself, never later: a digit may already have been typed then.
 */
function typeOverWhereTapped(): () => void {
  let arrived: HTMLInputElement | undefined;
  const onFocus = () => {
    arrived = focusedNumberField();
  };
  // The tap puts its caret after the field has got the focus, and the click comes after both.
  const onClick = ({ target }: Event) => {
    if (arrived !== undefined && target === arrived) arrived.select();
    arrived = undefined;
  };
  document.addEventListener('focusin', onFocus);
  document.addEventListener('click', onClick, { capture: true });
  return () => {
    document.removeEventListener('focusin', onFocus);
    document.removeEventListener('click', onClick, { capture: true });
  };
}
