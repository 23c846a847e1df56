import type { Kit } from '../core/readings/kit';
import { fieldKey } from '../entry/field-keys';
import { defaultKit, KIT_ITEMS, readKit } from '../entry/kit-entry';
import { LEVEL_RANGE, level, setKit, setLevel, shop } from '../state/shop';
import { NumberField } from '../widgets/number-field';
import { Page } from '../widgets/page';
import { to } from './paths';
import { UnitChoices } from './units-button';

const NAMES: Readonly<Record<keyof Kit, string>> = {
  indicatorResolution: 'Indicator: smallest step you read',
  indicatorError: 'Indicator: most it is off, either way',
  seating: 'Seating: how far the edge lifts from one seating to the next',
  plate: 'Plate: most it rises or falls under the block, either way',
  micrometerResolution: 'Micrometer: smallest step you read',
  micrometerError: 'Micrometer: most it is off between two places',
  heightSetting: 'Heights and places: how well you set them',
};

/** What is known of the shop's instruments: where the ± of every answer comes from. */
export function KitScreen() {
  const { kit: entry, level: levelText } = shop.value;
  const { problems } = readKit(entry);
  return (
    <Page title="Kit and units" back={{ to: to.bench(), name: 'the bench' }}>
      <section class="sheet" aria-label="Units">
        <UnitChoices />
      </section>
      <section class="sheet" aria-labelledby="kit-heading">
        <h2 id="kit-heading">How good the kit is</h2>
        <p class="soft">
          Every ± comes from these. They begin as common practice for a clean shop with good kit (no
          source); put in what your own certificates and trials say.
        </p>
        {KIT_ITEMS.map((item) => (
          <NumberField
            key={item}
            field={fieldKey.kit(item)}
            label={NAMES[item]}
            text={entry[item].text}
            unit={entry[item].unit}
            problem={problems.get(fieldKey.kit(item))}
            onText={(text) => setKit({ ...entry, [item]: { ...entry[item], text } })}
          />
        ))}
        <button type="button" class="button" onClick={() => setKit(defaultKit())}>
          Back to common practice
        </button>
      </section>
      <section class="sheet" aria-labelledby="level-heading">
        <h2 id="level-heading">How sure a verdict must be</h2>
        <NumberField
          field="level"
          label="‘In’ and ‘out’ are said from this chance on"
          text={levelText}
          unit="%"
          problem={
            level.value === undefined
              ? {
                  kind: 'wrong',
                  message: `Between ${LEVEL_RANGE.least} and ${LEVEL_RANGE.most} %`,
                }
              : undefined
          }
          onText={setLevel}
        />
        <p class="soft">ISO 14253-1 takes 95 %.</p>
      </section>
      <p class="soft small">Highedge {__APP_VERSION__}</p>
    </Page>
  );
}
