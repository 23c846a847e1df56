import * as v from 'valibot';
import { arePair, distinctIds, hasEveryHeight, standsInSection } from '../../store/rules';
import { indicator, instrumentName, micrometer as micrometerItem } from './instruments';
import { face, innerId, moment, named, typedLength } from './pieces';

/*
 * Shapes of the ways of reading, as `src/entry/setup-entry.ts` has them.
 */

const faces = v.pipe(
  v.strictTuple([face, face]),
  v.check((it) => arePair(it), 'The two faces do not look away from each other'),
);

const byIndicator = { indicator: v.exactOptional(indicator) };

const SAME_ID = 'Two readings of it have one id';
const CANNOT_STAND = 'The block cannot stand so';

const noseComparator = v.pipe(
  v.strictObject({
    kind: v.literal('nose comparator'),
    ...{ id: innerId, faces, base: face, noseHeight: typedLength, indicatorHeight: typedLength },
    ...{ instrument: v.exactOptional(instrumentName), ...byIndicator },
    placings: v.pipe(
      v.array(
        v.strictObject({ id: innerId, face, base: v.exactOptional(face), reading: typedLength }),
      ),
      v.check((it) => distinctIds(it), SAME_ID),
    ),
  }),
  v.check((it) => standsInSection(it), CANNOT_STAND),
);

const column = v.pipe(
  v.strictObject({
    kind: v.literal('column'),
    ...{ id: innerId, faces, base: face },
    ...{ instrument: v.exactOptional(instrumentName), ...byIndicator },
    heights: v.pipe(
      v.array(v.strictObject({ id: innerId, height: typedLength })),
      v.check((it) => distinctIds(it), SAME_ID),
    ),
    placings: v.pipe(
      v.array(
        v.strictObject({
          ...{ id: innerId, face, base: v.exactOptional(face) },
          readings: named(typedLength),
        }),
      ),
      v.check((it) => distinctIds(it), SAME_ID),
    ),
  }),
  v.check((it) => standsInSection(it), CANNOT_STAND),
  v.check((it) => hasEveryHeight(it), 'A traverse has other heights than its column'),
);

const micrometer = v.strictObject({
  kind: v.literal('micrometer'),
  ...{ id: innerId, faces, micrometer: v.exactOptional(micrometerItem) },
  places: v.pipe(
    v.array(
      v.strictObject({
        ...{ id: innerId, up: typedLength, across: typedLength, thickness: typedLength },
        takenOver: v.exactOptional(moment),
      }),
    ),
    v.check((it) => distinctIds(it), SAME_ID),
  ),
});

const overFace = v.strictObject({
  kind: v.picklist(['over the top', 'face map']),
  ...{ id: innerId, faces, ...byIndicator },
  places: v.pipe(
    v.array(
      v.strictObject({ id: innerId, up: typedLength, across: typedLength, reading: typedLength }),
    ),
    v.check((it) => distinctIds(it), SAME_ID),
  ),
});

const assumption = v.strictObject({
  kind: v.literal('assumed parallel'),
  ...{ id: innerId, faces, within: typedLength },
});

/** All setups of an inspection. */
export const setups = v.pipe(
  v.array(v.union([noseComparator, column, micrometer, overFace, assumption])),
  v.check((it) => distinctIds(it), 'Two ways of reading have one id'),
);
