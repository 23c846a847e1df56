import { AXES, FACES } from '../../core/part/faces';
import { LENGTH_UNITS } from '../../core/units/length';
import { INDICATOR_LENGTHS, LEVER_NUMBERS, MICROMETER_LENGTHS } from '../../entry/instruments';
import { CHOSEN_KINDS, KIT_LENGTHS, KIT_NUMBERS, PLATE_KINDS } from '../../entry/kit-entry';
import { byKind, fields, flag, forEach, list, oneOf, text } from './checks';

/* What is typed of a part, a kit and what lies in the drawer. */

export const face = oneOf(FACES);
const plainLength = { text, unit: oneOf(LENGTH_UNITS) };

export const typedLength = fields(plainLength, { from: fields(plainLength) });

const plainFinish = { text, unit: oneOf(['µm', 'µin']) };

export const partEntry = fields(
  {
    ...{ name: text, job: text, material: text, datum: face, finished: list(face) },
    size: fields(forEach(AXES, typedLength)),
    requirements: list(fields({ id: text, face, datum: face, tolerance: typedLength })),
  },
  {
    sizeLimits: fields({}, forEach(AXES, fields({ lower: typedLength, upper: typedLength }))),
    flatness: list(fields({ id: text, face, tolerance: typedLength })),
    finish: fields(plainFinish, { from: fields(plainFinish) }),
  },
);

const name = { id: text, name: text };
export const instrumentName = fields(name);

const plateSize = {
  ...{ plateKind: oneOf(PLATE_KINDS), plateLength: typedLength, plateWidth: typedLength },
};

export const kitEntry = fields(
  { ...forEach(KIT_LENGTHS, typedLength), ...forEach(KIT_NUMBERS, text), ...plateSize },
  { chosen: fields({}, forEach(CHOSEN_KINDS, instrumentName)) },
);

export const indicator = fields({
  ...name,
  ...{ ...forEach(INDICATOR_LENGTHS, typedLength), ...forEach(LEVER_NUMBERS, text) },
  ...{ lever: flag, range: typedLength, plus: oneOf(['pushed in', 'let out']) },
});

export const micrometer = fields({ ...name, ...forEach(MICROMETER_LENGTHS, typedLength) });

export const drawerItem = byKind({
  ...{ indicator, micrometer, comparator: instrumentName, column: instrumentName },
  plate: fields({ ...name, plate: typedLength, ...plateSize }),
  abrasive: fields({ ...name, grit: text }),
});

export const methodLimits = fields(
  forEach(['mostLapped', 'mostGround', 'lappedSide'], typedLength),
);
