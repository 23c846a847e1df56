interface SelectFieldProps<T extends string> {
  readonly id: string;
  readonly label: string;
  readonly options: readonly (readonly [T, string])[];
  readonly chosen: T;
  /** The id of what is wrong with the choice, where anything is: it stands elsewhere. */
  readonly wrong?: string | undefined;
  readonly onChoose: (option: T) => void;
}

/** One of several, in a list that opens. */
export function SelectField<T extends string>(props: SelectFieldProps<T>) {
  const { id, label, options, chosen, wrong, onChoose } = props;
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="field-box">
        <select
          id={id}
          value={chosen}
          aria-invalid={wrong !== undefined}
          aria-describedby={wrong}
          onChange={(event) => onChoose(event.currentTarget.value as T)}
        >
          {options.map(([option, text]) => (
            <option key={option} value={option}>
              {text}
            </option>
          ))}
        </select>
      </div>
    </div>
  );
}
