import type { Picture } from './picture';
import type { Drag } from './use-drag';
import type { View } from './view';

interface TurnHandleProps {
  readonly view: View;
  readonly picture: Picture;
  readonly drag: Drag;
  readonly moveBy: (by: Partial<View>) => void;
}

/** Degrees that one press of an arrow key turns or tilts. */
const KEY_STEP = 7.5;

/** What each arrow key does: the near side of the block goes the way that the arrow points. */
const KEYS: Readonly<Record<string, Partial<View>>> = {
  ArrowLeft: { turn: KEY_STEP },
  ArrowRight: { turn: -KEY_STEP },
  ArrowUp: { tilt: -KEY_STEP },
  ArrowDown: { tilt: KEY_STEP },
};

/** A place to drag from in every direction, and for the arrow keys. */
export function TurnHandle({ view, picture, drag, moveBy }: TurnHandleProps) {
  const names = picture.faces.map(({ face }) => face);
  const onKeyDown = (event: KeyboardEvent) => {
    const by = KEYS[event.key];
    if (by === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    moveBy(by);
  };
  return (
    <div
      class="turning-block-handle"
      role="slider"
      tabIndex={0}
      aria-label="Turn the block"
      aria-valuemin={0}
      aria-valuemax={360}
      aria-valuenow={Math.round(360 - view.turn)}
      aria-valuetext={`${names.join(', ')} in sight`}
      onKeyDown={onKeyDown}
      {...drag}
    >
      <svg viewBox="0 0 48 48" aria-hidden="true">
        <path d="M24 6V42M6 24H42M18 12l6-6 6 6M18 36l6 6 6-6M12 18l-6 6 6 6M36 18l6 6-6 6" />
      </svg>
    </div>
  );
}
