import type { Problems } from '../entry/problems';
import type { TypedLength } from '../entry/typed-length';
import { readAs } from '../words/read-as';
import { NumberField, type NumberFieldProps } from './number-field';

interface LengthFieldProps
  extends Omit<NumberFieldProps, 'text' | 'unit' | 'isLength' | 'problem' | 'readAs' | 'onText'> {
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
      problem={problems.get(rest.field)}
      readAs={readAs(typed)}
      onText={(text) => onTyped({ ...typed, text })}
    />
  );
}
