import { useRef, useState } from 'preact/hooks';
import { shop } from '../state/shop';
import { switchUnits, unitsWithSize } from '../state/switch-units';
import type { InspectionRecord, PartRecord } from '../store/records';
import { Choice } from '../widgets/choice';

interface UnitsProps {
  readonly part?: PartRecord;
  readonly inspection?: InspectionRecord;
}

const SIZES = [
  ['mm', 'mm'],
  ['in', 'inch'],
] as const;

const DEVIATIONS = [
  ['µm', 'µm'],
  ['mm', 'mm'],
  ['tenths', 'tenths'],
  ['thou', 'thou'],
] as const;

/** The units in use; what is typed on the screen goes along when they change. */
export function UnitChoices({ part, inspection }: UnitsProps) {
  const { units } = shop.value;
  return (
    <div class="stack">
      <Choice
        name="size-unit"
        legend="Sizes and heights in"
        options={SIZES}
        chosen={units.size}
        onChoose={(size) => switchUnits(unitsWithSize(units, size), part, inspection)}
      />
      <Choice
        name="deviation-unit"
        legend="Readings and errors in (a tenth is 0.0001 inch)"
        options={DEVIATIONS}
        chosen={units.deviation}
        onChoose={(deviation) => switchUnits({ ...units, deviation }, part, inspection)}
      />
    </div>
  );
}

/** What stands in the title band: shows the units, and opens the choice of them below. */
export function useUnitsButton(props: UnitsProps) {
  const [open, setOpen] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  // The panel goes with the focus in it, which would be nowhere.
  const close = () => {
    setOpen(false);
    opener.current?.focus();
  };
  const { size, deviation } = shop.value.units;
  const button = (
    <button
      ref={opener}
      type="button"
      class="band-button"
      aria-expanded={open}
      aria-label={`Units: ${size} · ${deviation}. Change`}
      onClick={() => setOpen(!open)}
    >
      {size} · {deviation}
    </button>
  );
  const panel = open && (
    <section
      class="sheet"
      aria-label="Units"
      onKeyDown={({ key }) => {
        if (key === 'Escape') close();
      }}
    >
      <UnitChoices {...props} />
      <button type="button" class="button" onClick={close}>
        Done
      </button>
    </section>
  );
  return { button, panel };
}
