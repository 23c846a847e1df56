import type { Problems } from '../../entry/problems';
import type { ReadingsBefore } from '../../entry/readings-before';
import type { TypedLength } from '../../entry/typed-length';
import { LengthField } from '../../widgets/length-field';
import { beforeInWords } from '../../words/reading-before';

interface ReadingFieldProps {
  readonly field: string;
  readonly label: string;
  readonly typed: TypedLength;
  readonly before: ReadingsBefore;
  readonly problems: Problems;
  readonly disabled: boolean;
  readonly wide?: boolean;
  readonly onFocus: () => void;
  readonly onTyped: (typed: TypedLength) => void;
}

/** What an instrument shows, with what was read before at the same point. */
export function ReadingField({ before, ...props }: ReadingFieldProps) {
  const { field, typed } = props;
  return <LengthField {...props} reading note={beforeInWords(before.get(field), typed)} />;
}
