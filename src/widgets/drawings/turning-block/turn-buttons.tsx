import { BELOW, movedOn, STANDING, toNextStop, type View } from './view';

interface TurnButtonsProps {
  /** Turns smoothly to what is made of the view that the block stands in or turns to. */
  readonly glideOn: (to: (aim: View) => View) => void;
}

/** The near side of the block goes the way that a button says. */
const BUTTONS: readonly (readonly [string, (aim: View) => View])[] = [
  ['Turn left', (aim) => movedOn(aim, { turn: toNextStop(aim.turn, 1) })],
  ['Turn right', (aim) => movedOn(aim, { turn: toNextStop(aim.turn, -1) })],
  ['From below', ({ turn }) => ({ turn, tilt: BELOW })],
  ['As it stands', () => STANDING],
];

/** For those who would rather press than drag. */
export function TurnButtons({ glideOn }: TurnButtonsProps) {
  return (
    <div class="turning-block-buttons">
      {BUTTONS.map(([name, to]) => (
        <button key={name} type="button" class="button" onClick={() => glideOn(to)}>
          {name}
        </button>
      ))}
    </div>
  );
}
