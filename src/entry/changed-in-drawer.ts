import type { DrawerItem, IndicatorEntry, MicrometerEntry } from './instruments';
import type { InstrumentName } from './kit-entry';
import type { TypedLength } from './typed-length';

/** What can be otherwise of an instrument than it was when it was read with. */
export type InstrumentFigure = Exclude<keyof IndicatorEntry | keyof MicrometerEntry, 'id' | 'kind'>;

/** What a thing in the drawer says otherwise by now than its copy in a setup, `was`. */
export function changedInDrawer(
  was: InstrumentName,
  item: DrawerItem,
): readonly InstrumentFigure[] {
  const now = new Map<string, Figure>(Object.entries(item));
  const then: readonly (readonly [string, Figure])[] = Object.entries(was);
  return then.flatMap(([key, figure]) =>
    key === 'id' || key === 'kind' || saidIn(figure) === saidIn(now.get(key))
      ? []
      : // All but id and kind of a copy are figures.
        [key as InstrumentFigure],
  );
}

type Figure = string | boolean | TypedLength;

function saidIn(figure: Figure | undefined): string {
  return typeof figure === 'object'
    ? `${figure.text.trim()} ${figure.unit}`
    : String(figure).trim();
}
