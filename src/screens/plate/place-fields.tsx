import type { ComponentChildren } from 'preact';
import type { Face } from '../../core/part/faces';
import { fieldKey } from '../../entry/field-keys';
import type { Problems } from '../../entry/problems';
import type { TypedLength } from '../../entry/typed-length';
import { LengthField } from '../../widgets/length-field';

/** A place on a face as typed, whatever is read there. */
export interface PlaceEntry {
  readonly id: string;
  readonly up: TypedLength;
  readonly across: TypedLength;
}

interface PlaceFieldsProps {
  readonly place: PlaceEntry;
  readonly number: number;
  readonly edges: { readonly up: Face; readonly across: Face };
  /** True where the part stands with the face upright, so that up is up. */
  readonly stands: boolean;
  readonly problems: Problems;
  readonly locked: boolean;
  /** True where it matters how far in the place is: by itself the middle is meant. */
  readonly asksAcross?: boolean;
  /** Said beside either distance, where it looks like something else. */
  readonly noteOf?: (distance: TypedLength) => string | undefined;
  readonly onChange: (changed: Partial<PlaceEntry>) => void;
  /** Absent where the place must stay. */
  readonly onRemove: (() => void) | undefined;
  readonly onFocus: () => void;
  /** The field of what is read at the place, where it stands with it. */
  readonly children?: ComponentChildren;
}

/** Where a place is, and what is read there. */
export function PlaceFields(props: PlaceFieldsProps) {
  const { place, number, edges, stands, problems, locked, onChange, onRemove, onFocus, children } =
    props;
  const { asksAcross = false, noteOf } = props;
  return (
    <fieldset class="stack">
      <legend class="sheet-head">
        Place {number}
        {!locked && onRemove !== undefined && (
          <button
            type="button"
            class="button button-quiet"
            aria-label={`Remove place ${number}`}
            onClick={onRemove}
          >
            Remove
          </button>
        )}
      </legend>
      <div class="columns">
        <LengthField
          field={fieldKey.up(place.id)}
          label={stands ? `Up from ${edges.up}` : `In from ${edges.up}`}
          typed={place.up}
          note={noteOf?.(place.up)}
          problems={problems}
          disabled={locked}
          onFocus={onFocus}
          onTyped={(typed) => onChange({ up: typed })}
        />
        <LengthField
          optional={asksAcross ? 'asked' : true}
          field={fieldKey.across(place.id)}
          label={`In from ${edges.across}`}
          typed={place.across}
          note={noteOf?.(place.across)}
          placeholder="middle"
          problems={problems}
          disabled={locked}
          onFocus={onFocus}
          onTyped={(typed) => onChange({ across: typed })}
        />
        {children}
      </div>
    </fieldset>
  );
}
