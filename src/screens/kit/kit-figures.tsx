import { fieldKey } from '../../entry/field-keys';
import {
  type ChosenKind,
  KIT_LENGTHS,
  KIT_NUMBERS,
  type KitEntry,
  type KitLength,
  type KitNumber,
} from '../../entry/kit-entry';
import type { Problems } from '../../entry/problems';
import { setKit } from '../../state/kits';
import { LengthField } from '../../widgets/length-field';
import { NumberField } from '../../widgets/number-field';
import { PlateFields } from './plate-fields';

const LENGTH_NAMES: Readonly<Record<KitLength, string>> = {
  indicatorResolution: 'Indicator: smallest step you read',
  indicatorError: 'Indicator: most it is off, either way',
  seating: 'Seating: how far the edge lifts from one seating to the next',
  plate: 'Plate: most it rises or falls under the block, either way',
  micrometerResolution: 'Micrometer: smallest step you read',
  micrometerError: 'Micrometer: most it is off between two places',
  heightSetting: 'Heights and places: how well you set them',
};

const NUMBER_NAMES: Readonly<Record<KitNumber, readonly [label: string, unit: string]>> = {
  leverAngle: ['Lever indicator: angle of the lever to the face (0 for a plunger)', '°'],
  leverWithin: ['Lever indicator: how well you know that angle', '°'],
  warmth: ['Warmth: most that opposite faces of the part differ', 'K'],
};

/** Which thing out of the drawer brings a figure with it. */
const COMES_WITH: Readonly<Partial<Record<KitLength | KitNumber, ChosenKind>>> = {
  indicatorResolution: 'indicator',
  indicatorError: 'indicator',
  leverAngle: 'indicator',
  leverWithin: 'indicator',
  micrometerResolution: 'micrometer',
  micrometerError: 'micrometer',
  plate: 'plate',
};

interface KitFiguresProps {
  readonly entry: KitEntry;
  readonly problems: Problems;
}

/** The figures of the kit, but for those that come with what was chosen out of the drawer. */
export function KitFigures({ entry, problems }: KitFiguresProps) {
  const isOwn = (item: KitLength | KitNumber) => {
    const kind = COMES_WITH[item];
    return kind === undefined || entry.chosen?.[kind] === undefined;
  };
  const isGraded = entry.plateKind !== 'stated';
  return (
    <div class="figures">
      {KIT_LENGTHS.filter((item) => isOwn(item) && (item !== 'plate' || !isGraded)).map((item) => (
        <LengthField
          key={item}
          field={fieldKey.kit(item)}
          label={LENGTH_NAMES[item]}
          typed={entry[item]}
          problems={problems}
          onTyped={(typed) => setKit({ ...entry, [item]: typed })}
        />
      ))}
      {KIT_NUMBERS.filter(isOwn).map((item) => (
        <NumberField
          key={item}
          field={fieldKey.kit(item)}
          label={NUMBER_NAMES[item][0]}
          text={entry[item]}
          unit={NUMBER_NAMES[item][1]}
          problem={problems.get(fieldKey.kit(item))}
          onText={(text) => setKit({ ...entry, [item]: text })}
        />
      ))}
      {isOwn('plate') && (
        <PlateFields
          id="plate"
          plate={entry}
          problems={problems}
          keyOf={fieldKey.kit}
          onChange={(plate) => setKit({ ...entry, ...plate })}
        />
      )}
    </div>
  );
}
