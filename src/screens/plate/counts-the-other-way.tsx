import { type InstrumentPart, readWithItem } from '../../entry/read-with';
import type { SetupEntry } from '../../entry/setup-entry';
import { drawer } from '../../state/drawer';
import { kitName } from '../../state/kits';
import { shop } from '../../state/shop';
import { otherWayInWords } from '../../words/instruments';

interface CountsTheOtherWayProps<S extends SetupEntry> {
  readonly parts: readonly InstrumentPart[];
  readonly onChange: (change: (now: S) => S) => void;
}

/**
 * A setup that was begun before the kit got an indicator that counts the other way does not turn its
 * sign: that would have turned what was read with another. Asks which it is, for the lean would be told the wrong way.
 */
export function CountsTheOtherWay<S extends SetupEntry>(props: CountsTheOtherWayProps<S>) {
  const { parts, onChange } = props;
  const wanted = shop.value.kit.chosen?.indicator?.id;
  const item = drawer.value.find(({ id }) => id === wanted);
  const isOpen = parts.some(({ kind, chosen }) => kind === 'indicator' && chosen === undefined);
  if (!isOpen || item?.kind !== 'indicator' || item.plus !== 'let out') return null;
  return (
    <div class="note note-warning stack across-all">
      <p>{otherWayInWords(kitName.value, item)}</p>
      <button
        type="button"
        class="button"
        onClick={() => onChange((now) => readWithItem(now, 'indicator', item))}
      >
        It is read with that
      </button>
    </div>
  );
}
