import { useLocation } from 'preact-iso';
import { fieldKey } from '../entry/field-keys';
import {
  defaultKit,
  KIT_LENGTHS,
  type KitEntry,
  type KitLength,
  type KitNumber,
  PLATE_KINDS,
} from '../entry/kit-entry';
import { readMethodLimits } from '../entry/method-limits';
import type { Problems } from '../entry/problems';
import { readKit } from '../entry/read-kit';
import { SHARE_RANGE, share, typedShare } from '../state/advice';
import {
  addKit,
  kitName,
  LEVEL_RANGE,
  level,
  methodLimits,
  setKit,
  setKitName,
  setLevel,
  setMethodLimits,
  setShare,
  shop,
  takeKit,
} from '../state/shop';
import { offlineReady } from '../updates';
import { LengthField } from '../widgets/length-field';
import { NumberField } from '../widgets/number-field';
import { Page } from '../widgets/page';
import { SelectField } from '../widgets/select-field';
import { TextField } from '../widgets/text-field';
import { to } from './paths';
import { UnitChoices } from './units-button';

const LENGTH_NAMES: Readonly<Record<KitLength, string>> = {
  indicatorResolution: 'Indicator: smallest step you read',
  indicatorError: 'Indicator: most it is off, either way',
  seating: 'Seating: how far the edge lifts from one seating to the next',
  plate: 'Plate: most it rises or falls under the block, either way',
  micrometerResolution: 'Micrometer: smallest step you read',
  micrometerError: 'Micrometer: most it is off between two places',
  heightSetting: 'Heights and places: how well you set them',
};

const NUMBERS: readonly (readonly [KitNumber, string, string])[] = [
  ['leverAngle', 'Lever indicator: angle of the lever to the face (0 for a plunger)', '°'],
  ['leverWithin', 'Lever indicator: how well you know that angle', '°'],
  ['warmth', 'Warmth: most that opposite faces of the part differ', 'K'],
];

const PLATE_OPTIONS = PLATE_KINDS.map(
  (kind) => [kind, kind === 'stated' ? 'As stated under the block' : kind] as const,
);

/** What is known of the shop's instruments: where the ± of every answer comes from. */
export function KitScreen() {
  const { kit: entry } = shop.value;
  const { problems } = readKit(entry);
  const { from } = useLocation().query;
  // Only within the app: an address may have come from anywhere.
  const back =
    from?.startsWith(`${to.bench()}part/`) === true
      ? { to: from, name: 'the readings' }
      : { to: to.bench(), name: 'the bench' };
  return (
    <Page title="Kit and units" back={back}>
      <section class="sheet" aria-label="Units">
        <UnitChoices />
      </section>
      <section class="sheet" aria-labelledby="kit-heading">
        <h2 id="kit-heading">How good the kit is</h2>
        <p class="soft">
          Every ± comes from these. They begin as common practice for a clean shop with good kit (no
          source); put in what your own certificates and trials say. Readings repeated after lifting
          the block take the place of the seating given here once there are enough of them.
        </p>
        <KitDrawer />
        <KitFields entry={entry} problems={problems} />
        <PlateFields entry={entry} problems={problems} />
        <button type="button" class="button" onClick={() => setKit(defaultKit())}>
          Back to common practice
        </button>
      </section>
      <LevelSheet />
      <ShareSheet />
      <p class="soft small">
        Highedge {__APP_VERSION__}.{' '}
        {offlineReady.value
          ? 'All of it is on this device: it works without a network.'
          : 'Not yet all on this device: keep the network until it is.'}
      </p>
    </Page>
  );
}

/** Which kit is in use, and the others of the shop. */
function KitDrawer() {
  const others = shop.value.otherKits ?? [];
  return (
    <>
      <TextField id="kit-name" label="Kit in use" text={kitName.value} onText={setKitName} />
      <div class="row">
        {others.map(({ name }, index) => (
          <button
            key={`${index} ${name}`}
            type="button"
            class="button"
            onClick={() => takeKit(index)}
          >
            Use {name.trim() || `the kit at place ${index + 1}`}
          </button>
        ))}
        <button type="button" class="button" onClick={addKit}>
          Add another kit
        </button>
      </div>
    </>
  );
}

interface FieldsProps {
  readonly entry: KitEntry;
  readonly problems: Problems;
}

function KitFields({ entry, problems }: FieldsProps) {
  const graded = entry.plateKind !== 'stated';
  return (
    <>
      {KIT_LENGTHS.filter((item) => item !== 'plate' || !graded).map((item) => (
        <LengthField
          key={item}
          field={fieldKey.kit(item)}
          label={LENGTH_NAMES[item]}
          typed={entry[item]}
          problems={problems}
          onTyped={(typed) => setKit({ ...entry, [item]: typed })}
        />
      ))}
      {NUMBERS.map(([item, label, unit]) => (
        <NumberField
          key={item}
          field={fieldKey.kit(item)}
          label={label}
          text={entry[item]}
          unit={unit}
          problem={problems.get(fieldKey.kit(item))}
          onText={(text) => setKit({ ...entry, [item]: text })}
        />
      ))}
    </>
  );
}

/** The plate by its grade, from which the share under a block is worked out. */
function PlateFields({ entry, problems }: FieldsProps) {
  return (
    <>
      <SelectField
        id="plate-kind"
        label="Surface plate"
        options={PLATE_OPTIONS}
        chosen={entry.plateKind}
        onChoose={(plateKind) => setKit({ ...entry, plateKind })}
      />
      {entry.plateKind !== 'stated' && (
        <div class="columns">
          {(['plateLength', 'plateWidth'] as const).map((side) => (
            <LengthField
              key={side}
              field={fieldKey.kit(side)}
              label={side === 'plateLength' ? 'Length of the plate' : 'Width of the plate'}
              typed={entry[side]}
              problems={problems}
              onTyped={(typed) => setKit({ ...entry, [side]: typed })}
            />
          ))}
        </div>
      )}
    </>
  );
}

const METHOD_LIMITS = [
  ['mostLapped', 'Most that is lapped by hand'],
  ['mostGround', 'Most that is ground'],
  ['lappedSide', 'Largest square face that is lapped by hand: its side'],
] as const;

/** How far a plan goes, and how fast the shop cuts. */
function ShareSheet() {
  const message = `Between ${SHARE_RANGE.least} and ${SHARE_RANGE.most} %`;
  const { problems } = readMethodLimits(methodLimits.value);
  return (
    <section class="sheet" aria-labelledby="share-heading">
      <h2 id="share-heading">How far to work</h2>
      <NumberField
        field="share"
        label="A plan brings each requirement to so much of what the drawing allows, its doubt included"
        text={typedShare.value}
        unit="%"
        problem={share.value === undefined ? { kind: 'wrong', message } : undefined}
        onText={setShare}
      />
      {METHOD_LIMITS.map(([item, label]) => (
        <LengthField
          key={item}
          field={fieldKey.methodLimit(item)}
          label={label}
          typed={methodLimits.value[item]}
          problems={problems}
          onTyped={(typed) => setMethodLimits({ ...methodLimits.value, [item]: typed })}
        />
      ))}
      <p class="soft small">These three begin as common practice, without a source.</p>
      <a class="button" href={to.rates()}>
        How fast your papers cut
      </a>
    </section>
  );
}

function LevelSheet() {
  const message = `Between ${LEVEL_RANGE.least} and ${LEVEL_RANGE.most} %`;
  return (
    <section class="sheet" aria-labelledby="level-heading">
      <h2 id="level-heading">How sure a verdict must be</h2>
      <NumberField
        field="level"
        label="‘In’ and ‘out’ are said from this chance on"
        text={shop.value.level}
        unit="%"
        problem={level.value === undefined ? { kind: 'wrong', message } : undefined}
        onText={setLevel}
      />
      <p class="soft">ISO 14253-1 takes 95 %.</p>
    </section>
  );
}
