import * as v from 'valibot';
import { AXES } from '../../core/part/faces';
import { keyOf } from '../../store/keys';
import { type EnteredRecord, FORMAT, type VersionRecord, WORK_METHODS } from '../../store/records';
import { distinctIds } from '../../store/rules';
import { kitEntry, methodLimits, partEntry } from './entries';
import { drawerItem } from './instruments';
import { face, forEach, id, innerId, moment, named, text } from './pieces';
import { setups } from './setups';

/*
 * Shapes of whole records, as `src/store/records.ts` has them. The compiler sees to it that the two
 * say the same: tests/exchange/shape.test.ts.
 */

const base = { format: v.literal(FORMAT), made: moment, changed: moment };
const version = v.pipe(v.number(), v.integer(), v.minValue(1));

const said = v.strictObject({
  requirement: innerId,
  found: v.exactOptional(
    v.strictObject({
      ...{ value: v.number(), expanded: v.number(), probability: v.number() },
      withForm: v.exactOptional(v.strictObject(forEach(['width', 'low', 'high'], v.number()))),
      verdict: v.picklist(['in', 'out', 'too close to call']),
    }),
  ),
});

const at = v.strictObject({ at: moment });

export const partRecord = v.strictObject({
  ...{ ...base, kind: v.literal('part'), id, entry: partEntry, example: v.boolean() },
  closed: v.exactOptional(
    v.strictObject({ at: moment, inspection: id, who: v.exactOptional(text) }),
  ),
  archived: v.exactOptional(at),
  removed: v.exactOptional(at),
});

export const inspectionRecord = v.strictObject({
  ...{ ...base, kind: v.literal('inspection'), id, part: id, setups },
  leftOut: v.exactOptional(named(v.strictObject({ at: moment, why: text }))),
  dismissed: v.exactOptional(v.array(text)),
  closed: v.exactOptional(
    v.strictObject({
      ...{ at: moment, part: partEntry, kit: kitEntry },
      ...{ level: v.exactOptional(text), who: v.exactOptional(text) },
      ...{ method: v.exactOptional(version), said: v.exactOptional(v.array(said)) },
    }),
  ),
});

export const workRecord = v.strictObject({
  ...{ ...base, kind: v.literal('work'), id, part: id, after: id },
  ...{ face, method: v.picklist(WORK_METHODS), abrasive: text, note: text },
  amount: v.strictObject({ text, unit: v.picklist(['seconds', 'strokes']) }),
  advised: v.strictObject({
    mean: v.number(),
    slopes: v.strictObject(forEach(AXES, v.exactOptional(v.number()))),
  }),
  notLearned: v.exactOptional(at),
});

export const shopRecord = v.strictObject({
  ...{ ...base, kind: v.literal('shop'), kit: kitEntry, kitName: v.exactOptional(text) },
  who: v.exactOptional(text),
  otherKits: v.exactOptional(v.array(v.strictObject({ name: text, kit: kitEntry }))),
  drawer: v.exactOptional(
    v.pipe(
      v.array(drawerItem),
      v.check((it) => distinctIds(it), 'Two things in the drawer have one id'),
    ),
  ),
  units: v.strictObject({
    size: v.picklist(['mm', 'in']),
    deviation: v.picklist(['µm', 'mm', 'thou', 'tenths']),
  }),
  level: text,
  share: v.exactOptional(text),
  methodLimits: v.exactOptional(methodLimits),
  learnedSince: v.exactOptional(named(moment)),
  setAnew: v.exactOptional(named(v.array(moment))),
});

const enteredRecord = v.variant('kind', [partRecord, inspectionRecord, workRecord, shopRecord]);

export const versionRecord = v.pipe(
  v.strictObject({
    ...{
      ...base,
      kind: v.literal('version'),
      of: text,
      id: text,
      record: enteredRecord,
      why: text,
    },
  }),
  v.check((it) => isOfItsRecord(it), 'It does not go with the record that it is a state of'),
);

/** A version stands under the key of its record and the time of its state; a mark behind that tells two of one time apart. */
function isOfItsRecord(version: { of: string; id: string; record: unknown }): boolean {
  const record = version.record as EnteredRecord;
  const [when, mark, ...more] = version.id.split(' ');
  return (
    version.of === keyOf(record) &&
    when === record.changed &&
    more.length === 0 &&
    (mark === undefined || /^[0-9a-f]{1,8}$/.test(mark))
  );
}

/** Everything that goes into a backup: what was entered and its earlier states. */
export type KeptRecord = EnteredRecord | VersionRecord;

export const keptRecord = v.variant('kind', [
  partRecord,
  inspectionRecord,
  workRecord,
  shopRecord,
  versionRecord,
]);
