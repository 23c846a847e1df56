import type { Problems } from '../../entry/problems';
import type { ReadingsBefore } from '../../entry/readings-before';
import type { TypedLength } from '../../entry/typed-length';
import { LengthField } from '../../widgets/length-field';
import { beforeInWords } from '../../words/reading-before';
import { moment } from '../../words/time';

interface ReadingFieldProps {
  readonly field: string;
  readonly label: string;
  readonly typed: TypedLength;
  readonly before: ReadingsBefore;
  readonly problems: Problems;
  readonly disabled: boolean;
  readonly wide?: boolean;
  /** When it was read, where it was taken over from earlier. */
  readonly takenOver?: string | undefined;
  readonly onFocus: () => void;
  readonly onTyped: (typed: TypedLength) => void;
}

/** What an instrument shows, with what was read before at the same point. */
export function ReadingField({ before, takenOver, ...props }: ReadingFieldProps) {
  const { field, typed } = props;
  const note =
    takenOver === undefined
      ? beforeInWords(before.get(field), typed)
      : `Taken over from ${moment(takenOver)}`;
  return <LengthField {...props} reading note={note} />;
}
