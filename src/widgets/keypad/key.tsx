import type { ComponentChildren } from 'preact';

interface KeyProps {
  readonly label: ComponentChildren;
  readonly name?: string;
  readonly kind?: 'word' | 'main';
  readonly onPress: () => void;
}

/** One key: felt where the device can shake, and out of the order of focus. */
export function Key({ label, name, kind, onPress }: KeyProps) {
  return (
    <button
      type="button"
      class={kind === undefined ? 'key' : `key key-${kind}`}
      aria-label={name}
      // Out of the order of focus: with a keyboard there is no need of it.
      tabIndex={-1}
      onClick={() => {
        onPress();
        feel();
      }}
    >
      {label}
    </button>
  );
}

/** A key is felt, on devices that can shake: oily fingers do not look twice. */
function feel(): void {
  navigator.vibrate?.(8);
}
