interface ChoiceProps<T extends string> {
  readonly name: string;
  readonly legend: string;
  readonly options: readonly (readonly [T, string])[];
  readonly chosen: T;
  readonly onChoose: (option: T) => void;
}

/** One of a few, all in sight: a row of buttons that acts as radio buttons do. */
export function Choice<T extends string>(props: ChoiceProps<T>) {
  const { name, legend, options, chosen, onChoose } = props;
  return (
    <fieldset class="choice">
      <legend>{legend}</legend>
      <div class="choice-row">
        {options.map(([option, label]) => (
          <label key={option} class={option === chosen ? 'choice-one chosen' : 'choice-one'}>
            <input
              type="radio"
              name={name}
              value={option}
              checked={option === chosen}
              onChange={() => onChoose(option)}
            />
            {label}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
