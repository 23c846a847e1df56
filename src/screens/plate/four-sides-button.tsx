import type { Block } from '../../core/part/block';
import {
  extraSidesAreEmpty,
  fitsLyingDown,
  isFourSided,
  onAllFourSides,
  onTwoSides,
  type StandingSetup,
} from '../../entry/four-sides';
import { newId } from '../../state/shop';

interface FourSidesButtonProps<S extends StandingSetup> {
  readonly setup: S;
  readonly block: Block;
  readonly onChange: (change: (now: S) => S) => void;
}

/** Has the block turned on all four sides of its section, where it is tall enough on each, and back. */
export function FourSidesButton<S extends StandingSetup>(props: FourSidesButtonProps<S>) {
  const { setup, block, onChange } = props;
  if (isFourSided(setup)) {
    return (
      <button
        type="button"
        class="button"
        disabled={!extraSidesAreEmpty(setup)}
        onClick={() => onChange(onTwoSides)}
      >
        Back to two sides
      </button>
    );
  }
  if (!fitsLyingDown(setup, block)) return null;
  return (
    <button
      type="button"
      class="button"
      onClick={() => onChange((now) => onAllFourSides(now, newId))}
    >
      Turn it on all four sides
    </button>
  );
}
