import * as v from 'valibot';
import { INDICATOR_LENGTHS, LEVER_NUMBERS, MICROMETER_LENGTHS } from '../../entry/instruments';
import { CHOSEN_KINDS, PLATE_KINDS } from '../../entry/kit-entry';
import { forEach, id, text, typedLength } from './pieces';

/*
 * Shapes of what lies in the drawer, as `src/entry/instruments.ts` has them.
 */

/** A setup that was only known to be read with the figures of a kit names an instrument without an id. */
const named = { id: v.union([id, v.literal('')]), name: text };

export const instrumentName = v.strictObject(named);

/** What a kit has out of the drawer. */
export const chosen = v.strictObject(forEach(CHOSEN_KINDS, v.exactOptional(instrumentName)));

/** A plate by its standard, grade and size. */
export const gradedPlate = {
  plateKind: v.picklist(PLATE_KINDS),
  plateLength: typedLength,
  plateWidth: typedLength,
};

export const indicator = v.strictObject({
  ...{ kind: v.literal('indicator'), ...named },
  ...{ ...forEach(INDICATOR_LENGTHS, typedLength), ...forEach(LEVER_NUMBERS, text) },
  ...{ lever: v.boolean(), range: typedLength, plus: v.picklist(['pushed in', 'let out']) },
});

export const micrometer = v.strictObject({
  ...{ kind: v.literal('micrometer'), ...named, ...forEach(MICROMETER_LENGTHS, typedLength) },
});

const plate = v.strictObject({
  ...{ kind: v.literal('plate'), ...named, plate: typedLength, ...gradedPlate },
});

export const drawerItem = v.variant('kind', [
  indicator,
  micrometer,
  plate,
  v.strictObject({ kind: v.literal('comparator'), ...named }),
  v.strictObject({ kind: v.literal('column'), ...named }),
  v.strictObject({ kind: v.literal('abrasive'), ...named, grit: text }),
]);
