import { goOnAfter } from './going-on';

interface SearchFieldProps {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  /** Goes to what was found; without it Enter goes on to the next field. */
  readonly onEnter?: () => void;
}

/** A field for words to be found, with the browser's own way to empty it. */
export function SearchField({ id, label, text, onText, onEnter }: SearchFieldProps) {
  return (
    <div class="field field-text">
      <label for={id}>{label}</label>
      <div class="field-box">
        <input
          id={id}
          type="search"
          autocomplete="off"
          enterkeyhint="search"
          value={text}
          onInput={(event) => onText(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key !== 'Enter' || event.isComposing) return;
            event.preventDefault();
            if (onEnter === undefined) goOnAfter(event.currentTarget);
            else onEnter();
          }}
        />
      </div>
    </div>
  );
}
