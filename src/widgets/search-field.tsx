interface SearchFieldProps {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  readonly onText: (text: string) => void;
}

/** A field for words to be found, with the browser's own way to empty it. */
export function SearchField({ id, label, text, onText }: SearchFieldProps) {
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
        />
      </div>
    </div>
  );
}
