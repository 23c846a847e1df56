import { isRepeat, withoutPlacing } from '../../entry/placings';
import type { ColumnSetup, NoseComparatorSetup } from '../../entry/setup-entry';

type Standing = ColumnSetup | NoseComparatorSetup;

interface SeatingButtonsProps<S extends Standing> {
  readonly setup: S;
  readonly placing: S['placings'][number];
  /** The setup with one more seating of that side. */
  readonly again: (now: S, placing: string) => S;
  readonly onChange: (change: (now: S) => S) => void;
}

/** One more seating of a side, and a seating that was one too many. */
export function SeatingButtons<S extends Standing>(props: SeatingButtonsProps<S>) {
  const { setup, placing, again, onChange } = props;
  const { id, face } = placing;
  return (
    <>
      <button type="button" class="button" onClick={() => onChange((now) => again(now, id))}>
        Seat again: {face} side
      </button>
      {isRepeat(setup.placings, id) && (
        <button
          type="button"
          class="button"
          onClick={() => onChange((now) => withoutPlacing(now, id))}
        >
          Remove this seating
        </button>
      )}
    </>
  );
}
