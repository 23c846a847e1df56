import { useEffect, useState } from 'preact/hooks';
import { DrawnSign } from '../drawn-sign';
import { keepInSight } from '../field-in-sight';
import {
  askToTakeBack,
  eraseFrom,
  goToNext,
  isLast,
  takesBack,
  takesUnits,
  turnSign,
  typeAfter,
  typeAnew,
  typeInto,
  valueBefore,
} from '../number-fields';
import { useFocusedNumberField } from './focused-number-field';
import { Key } from './key';
import { typeOverWhereTapped } from './type-over-where-tapped';

const DIGITS = ['7', '8', '9', '4', '5', '6', '1', '2', '3'];

/** The other layer: what else a length may be typed with. Each leads back to the digits. */
const UNITS = ['µm', 'mm', 'in', 'tenths', 'thou'];
const SIGNS = [
  ['(', 'Open bracket', '('],
  ['+', 'Plus', '+'],
  ['−', 'Minus', '-'],
  [')', 'Close bracket', ')'],
  ['×', 'Times', '*'],
  ['/', 'Divided by', '/'],
] as const;

/**
 * Our own keypad: the system's has no minus on some phones. It shows while a number field has the
 * focus, and leaves the focus where it is.
 */
export function Keypad() {
  const field = useFocusedNumberField();
  const [layer, setLayer] = useState<'digits' | 'units'>('digits');
  useEffect(typeOverWhereTapped, []);
  useEffect(() => {
    document.documentElement.classList.toggle('keypad-open', field !== undefined);
    setLayer('digits');
    // The pad must not lie over the field.
    return field && keepInSight(field);
  }, [field]);
  if (field === undefined) return null;
  return (
    // A press on the pad must not take the focus from the field.
    <section class="keypad" aria-label="Keypad" onPointerDown={(e) => e.preventDefault()}>
      <TopKeys field={field} layer={layer} onLayer={setLayer} />
      <div class="keypad-keys">
        {layer === 'digits' ? (
          <Digits field={field} />
        ) : (
          <UnitsAndSigns field={field} onTyped={() => setLayer('digits')} />
        )}
      </div>
      <Key label={isLast(field) ? 'Done' : 'Next'} kind="main" onPress={() => goToNext(field)} />
    </section>
  );
}

interface LayerProps {
  readonly field: HTMLInputElement;
}

interface TopKeysProps extends LayerProps {
  readonly layer: 'digits' | 'units';
  readonly onLayer: (layer: 'digits' | 'units') => void;
}

/** The row above the digits. A key that has nothing to do here is left out, its place stays. */
function TopKeys({ field, layer, onLayer }: TopKeysProps) {
  const before = valueBefore(field);
  const other = layer === 'digits' ? 'units' : 'digits';
  const label = layer === 'digits' ? `${isInch(field) ? 'in' : 'mm'} + /` : '1 2 3';
  return (
    <div class="keypad-top">
      {takesBack(field) ? (
        <Key label="Undo" kind="word" onPress={() => askToTakeBack(field)} />
      ) : (
        <span />
      )}
      {before === undefined ? (
        <span />
      ) : (
        <Key
          label="Repeat"
          kind="word"
          name={`Repeat the last: ${before}`}
          onPress={() => typeAnew(field, before)}
        />
      )}
      {takesUnits(field) ? (
        <Key
          label={label}
          kind="word"
          name={`${label}: ${layer === 'digits' ? 'signs and units' : 'digits'}`}
          onPress={() => onLayer(other)}
        />
      ) : (
        <span />
      )}
      <Key
        label={<DrawnSign sign="erase" />}
        kind="word"
        name="Erase"
        onPress={() => eraseFrom(field)}
      />
    </div>
  );
}

const INCH_UNITS: readonly (string | undefined)[] = ['in', 'thou', 'tenths'];

function isInch({ dataset }: HTMLInputElement): boolean {
  return INCH_UNITS.includes(dataset.unit);
}

function Digits({ field }: LayerProps) {
  const digit = (text: string) => (
    <Key key={text} label={text} onPress={() => typeInto(field, text)} />
  );
  return (
    <>
      {DIGITS.map(digit)}
      <Key label="±" name="Turn the sign" onPress={() => turnSign(field)} />
      {digit('0')}
      <Key label="." name="Decimal point" onPress={() => typeInto(field, '.')} />
    </>
  );
}

function UnitsAndSigns({ field, onTyped }: LayerProps & { readonly onTyped: () => void }) {
  const add = (text: string) => {
    typeAfter(field, text);
    onTyped();
  };
  return (
    <>
      {UNITS.map((unit) => (
        <Key key={unit} label={unit} kind="word" onPress={() => add(` ${unit}`)} />
      ))}
      {SIGNS.map(([label, name, text]) => (
        <Key key={text} label={label} name={name} onPress={() => add(text)} />
      ))}
      {/* Between a whole inch and its fraction: '2 1/2'. */}
      {isInch(field) && <Key label="space" kind="word" onPress={() => add(' ')} />}
    </>
  );
}
