import type { Problems } from '../entry/problems';
import type { TypedLength } from '../entry/typed-length';
import { hasOwnUnit, readAs } from '../words/read-as';
import { NumberField, type NumberFieldProps } from './number-field';

interface LengthFieldProps
  extends Omit<
    NumberFieldProps,
    'text' | 'unit' | 'isLength' | 'ownUnit' | 'problem' | 'readAs' | 'onText'
  > {
  readonly typed: TypedLength;
  /** Problems of all fields; the one of this field is shown. */
  readonly problems: Problems;
  readonly onTyped: (typed: TypedLength) => void;
}

/** A field for a length as typed, with its unit. */
export function LengthField({ typed, problems, onTyped, ...rest }: LengthFieldProps) {
  return (
    <NumberField
      {...rest}
      text={typed.text}
      unit={typed.unit}
      isLength
      ownUnit={hasOwnUnit(typed)}
      problem={problems.get(rest.field)}
      readAs={readAs(typed)}
      onText={(text) => onTyped({ text, unit: typed.unit })}
    />
  );
}
