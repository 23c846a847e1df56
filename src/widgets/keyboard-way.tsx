import { goOnAfter } from './going-on';

interface KeyboardWayProps {
  /** A selector of what it leads to: the first that stands further down. */
  readonly to: string;
  readonly name: string;
}

/** A short way past what explains, to what is done next: seen only with the keyboard's focus on it. */
export function KeyboardWay({ to, name }: KeyboardWayProps) {
  return (
    <button
      type="button"
      class="button for-the-keyboard"
      onClick={({ currentTarget }) => goOnAfter(currentTarget, to)}
    >
      {name}
    </button>
  );
}
