import type { ColumnSetup, NoseComparatorSetup, SetupEntry } from '../../entry/setup-entry';
import { arePair, hasEveryHeight, standsInSection } from '../rules';
import { byKind, type Check, type Checks, fields, list, moment, named, text } from './checks';
import { face, indicator, instrumentName, micrometer, typedLength } from './entries';

/* Ways of reading, with all that is typed into them. */

const pair: Check = (value) =>
  list(face)(value) &&
  (value as readonly unknown[]).length === 2 &&
  arePair(value as unknown as SetupEntry['faces']);

const setup = { id: text, faces: pair };
const readWith = { indicator, instrument: instrumentName };
const inPlaces = (read: Checks, optional: Checks = {}) =>
  list(fields({ id: text, up: typedLength, across: typedLength, ...read }, optional));

const noseComparator = fields(
  {
    ...{ ...setup, base: face, noseHeight: typedLength, indicatorHeight: typedLength },
    placings: list(fields({ id: text, face, reading: typedLength }, { base: face })),
  },
  readWith,
);

const column = fields(
  {
    ...{ ...setup, base: face, heights: list(fields({ id: text, height: typedLength })) },
    placings: list(fields({ id: text, face, readings: named(typedLength) }, { base: face })),
  },
  readWith,
);

const overFace = fields({ ...setup, places: inPlaces({ reading: typedLength }) }, { indicator });

/** All setups of an inspection. */
export const setups = list(
  byKind({
    'nose comparator': (value) =>
      noseComparator(value) && standsInSection(value as NoseComparatorSetup),
    column: (value) =>
      column(value) &&
      standsInSection(value as ColumnSetup) &&
      hasEveryHeight(value as ColumnSetup),
    micrometer: fields(
      { ...setup, places: inPlaces({ thickness: typedLength }, { takenOver: moment }) },
      { micrometer },
    ),
    ...{ 'over the top': overFace, 'face map': overFace },
    'assumed parallel': fields({ ...setup, within: typedLength }),
  }),
);
