import fc from 'fast-check';
import { FACE_PAIRS, FACES, oppositeFace, pairsAround } from '../../../src/core/part/faces';
import { LENGTH_UNITS } from '../../../src/core/units/length';
import { defaultKit, KIT_LENGTHS, KIT_NUMBERS, PLATE_KINDS } from '../../../src/entry/kit-entry';
import type { ColumnSetup, SetupEntry } from '../../../src/entry/setup-entry';
import type { KeptRecord } from '../../../src/exchange/shape/records';
import { keyOf } from '../../../src/store/keys';
import {
  type EnteredRecord,
  FORMAT,
  type InspectionRecord,
  type PartRecord,
  type ShopRecord,
  type VersionRecord,
  WORK_METHODS,
  type WorkRecord,
} from '../../../src/store/records';

/* Shops of many shapes: whatever the records can hold, sensible or not. */

const id = fc.uuid();
const face = fc.constantFrom(...FACES);
const text = fc.oneof(
  fc.constantFrom('', '34', '-3,25', '+0.5', '=1+1', 'a "quoted", text\nof two lines', 'µ ½ 块 😀'),
  fc.string({ unit: 'grapheme', maxLength: 12 }),
);
const typed = fc.record({ text, unit: fc.constantFrom(...LENGTH_UNITS) });
/** Few moments, so that two records often have the same. */
const moment = fc
  .integer({ min: 0, max: 5 })
  .map((day) => new Date(Date.UTC(2024, 2, 5 + day, 14, 7)).toISOString());

function maybe<T>(name: string, value: fc.Arbitrary<T>): fc.Arbitrary<object> {
  return fc.option(value, { nil: undefined }).map((it) => (it === undefined ? {} : { [name]: it }));
}

/** All of the parts of an object, put together. */
function together<T>(...parts: readonly fc.Arbitrary<object>[]): fc.Arbitrary<T> {
  return fc.tuple(...parts).map((all) => Object.assign({}, ...all) as T);
}

const base = fc.record({ format: fc.constant(FORMAT), made: moment, changed: moment });
const at = fc.record({ at: moment });

const partEntry = together<PartRecord['entry']>(
  fc.record({
    name: text,
    job: text,
    material: text,
    size: fc.record({ x: typed, y: typed, z: typed }),
    datum: face,
    requirements: fc.uniqueArray(fc.record({ id, face, datum: face, tolerance: typed }), {
      selector: (one) => one.id,
      maxLength: 3,
    }),
    finished: fc.uniqueArray(face),
  }),
  maybe(
    'sizeLimits',
    fc.constant({
      x: {
        lower: { text: '-0.01', unit: 'mm' as const },
        upper: { text: '', unit: 'mm' as const },
      },
    }),
  ),
  maybe('finish', fc.record({ text, unit: fc.constantFrom('µm', 'µin') })),
);

const kit = fc
  .tuple(
    fc.record(Object.fromEntries(KIT_LENGTHS.map((item) => [item, typed]))),
    fc.record(Object.fromEntries(KIT_NUMBERS.map((item) => [item, text]))),
    fc.record({
      plateKind: fc.constantFrom(...PLATE_KINDS),
      plateLength: typed,
      plateWidth: typed,
    }),
  )
  .map((all) => Object.assign(defaultKit(), ...all) as ReturnType<typeof defaultKit>);

const number = fc.double({ noNaN: true, min: 1e-3, max: 50 });
const said = together(
  fc.record({ requirement: id }),
  maybe(
    'found',
    fc.record({
      ...{ value: number, expanded: number, probability: number },
      verdict: fc.constantFrom('in', 'out', 'too close to call'),
    }),
  ),
);

const pair = fc
  .tuple(fc.constantFrom(...FACE_PAIRS), fc.boolean())
  .map(([[one, other], swapped]) => (swapped ? ([other, one] as const) : ([one, other] as const)));
const stand = pair.chain((faces) =>
  fc.constantFrom(...pairsAround(faces[0]).flat()).map((on) => ({ faces, base: on })),
);

const nose = stand.chain(({ faces, base: on }) =>
  fc.record({
    kind: fc.constant('nose comparator' as const),
    ...{ id, faces: fc.constant(faces), base: fc.constant(on) },
    ...{ noseHeight: typed, indicatorHeight: typed },
    placings: fc.uniqueArray(
      fc.oneof(
        fc.record({ id, face: fc.constantFrom(...faces), reading: typed }),
        fc.record({
          ...{ id, reading: typed, base: fc.constantFrom(...faces) },
          face: fc.constantFrom(on, oppositeFace(on)),
        }),
      ),
      { selector: (one) => one.id, maxLength: 4 },
    ),
  }),
);

const column = fc
  .tuple(stand, fc.uniqueArray(id, { minLength: 1, maxLength: 3 }))
  .chain(([{ faces, base: on }, heights]) =>
    fc.record({
      kind: fc.constant('column' as const),
      ...{ id, faces: fc.constant(faces), base: fc.constant(on) },
      heights: fc
        .tuple(...heights.map(() => typed))
        .map((all) => all.map((height, index) => ({ id: heights[index]!, height }))),
      placings: fc.uniqueArray(
        together<ColumnSetup['placings'][number]>(
          fc.oneof(
            fc.record({ id, face: fc.constantFrom(...faces) }),
            fc.record({
              ...{ id, base: fc.constantFrom(...faces) },
              face: fc.constantFrom(on, oppositeFace(on)),
            }),
          ),
          fc.record({
            readings: fc.record(Object.fromEntries(heights.map((height) => [height, typed]))),
          }),
        ),
        { selector: (one) => one.id, maxLength: 3 },
      ),
    }),
  );

const places = (of: 'thickness' | 'reading', more: fc.Arbitrary<object> = fc.constant({})) =>
  fc.uniqueArray(
    together<{ id: string }>(fc.record({ id, up: typed, across: typed, [of]: typed }), more),
    { selector: (one) => one.id, maxLength: 4 },
  );

const setup: fc.Arbitrary<SetupEntry> = fc.oneof(
  nose,
  column,
  fc.record({
    kind: fc.constant('micrometer'),
    id,
    faces: pair,
    places: places('thickness', maybe('takenOver', moment)),
  }),
  fc.record({
    ...{ kind: fc.constantFrom('over the top', 'face map'), id, faces: pair },
    places: places('reading'),
  }),
  fc.record({ kind: fc.constant('assumed parallel'), id, faces: pair, within: typed }),
) as fc.Arbitrary<SetupEntry>;

const setups = fc.uniqueArray(setup, { selector: (one) => one.id, maxLength: 4 });

const partRecord = together<PartRecord>(
  base,
  fc.record({ kind: fc.constant('part'), id, entry: partEntry, example: fc.boolean() }),
  maybe('closed', together(fc.record({ at: moment, inspection: id }), maybe('who', text))),
  maybe('archived', at),
  maybe('removed', at),
);

const inspectionRecord = together<InspectionRecord>(
  base,
  fc.record({ kind: fc.constant('inspection'), id, part: id, setups }),
  maybe('leftOut', fc.dictionary(id, fc.record({ at: moment, why: text }), { maxKeys: 2 })),
  maybe(
    'closed',
    together(
      fc.record({ at: moment, part: partEntry, kit }),
      maybe('level', text),
      maybe('who', text),
      maybe(
        'method',
        fc.nat(9).map((number) => number + 1),
      ),
      maybe('said', fc.array(said, { maxLength: 2 })),
    ),
  ),
);

const workRecord = together<WorkRecord>(
  base,
  fc.record({
    kind: fc.constant('work'),
    id,
    part: id,
    after: id,
    face,
    abrasive: text,
    note: text,
  }),
  fc.record({
    method: fc.constantFrom(...WORK_METHODS),
    amount: fc.record({ text, unit: fc.constantFrom('seconds', 'strokes') }),
    advised: fc.record({
      mean: fc.double({ noNaN: true, min: 0, max: 50 }),
      slopes: fc.constant({ x: -0.02 }),
    }),
  }),
  maybe('notLearned', at),
);

const shopRecord = together<ShopRecord>(
  base,
  fc.record({ kind: fc.constant('shop'), kit, level: text }),
  fc.record({
    units: fc.record({
      size: fc.constantFrom('mm', 'in'),
      deviation: fc.constantFrom('µm', 'tenths'),
    }),
  }),
  maybe('who', text),
  maybe('kitName', text),
  maybe('otherKits', fc.array(fc.record({ name: text, kit }), { maxLength: 2 })),
  maybe('share', text),
  maybe(
    'learnedSince',
    fc.dictionary(fc.constantFrom('steel · 400 · lap · seconds', '__x'), moment),
  ),
  maybe(
    'setAnew',
    fc.dictionary(fc.constantFrom('comparator'), fc.array(moment, { maxLength: 2 })),
  ),
);

const entered: fc.Arbitrary<EnteredRecord> = fc.oneof(
  partRecord,
  inspectionRecord,
  workRecord,
  shopRecord,
);

/** A version as the app makes it where somebody puts a slip right. */
function versionOf(record: EnteredRecord, made: string, why: string): VersionRecord {
  return {
    ...{ format: FORMAT, made, changed: made, kind: 'version', why },
    ...{ of: keyOf(record), id: record.changed, record },
  };
}

/** Records of one shop: one state of each. */
export const shopRecords: fc.Arbitrary<KeptRecord[]> = fc
  .array(fc.tuple(entered, fc.option(fc.tuple(entered, moment, text))), { maxLength: 8 })
  .map((all) =>
    all.flatMap(([record, earlier]): KeptRecord[] =>
      earlier === null ? [record] : [record, versionOf(earlier[0], earlier[1], earlier[2])],
    ),
  )
  .map((all) => [...new Map(all.map((record) => [keyOf(record), record])).values()]);

/** Shops that come from one another: few records, each in few states, so that they meet. */
export const relatedShops = (count: number): fc.Arbitrary<KeptRecord[][]> =>
  fc
    .tuple(
      fc.array(entered, { minLength: 1, maxLength: 3 }),
      fc.array(moment, { minLength: 3, maxLength: 3 }),
    )
    .chain(([records, moments]) => {
      const states = records.flatMap((record) =>
        moments.flatMap((changed) => [
          { ...record, changed },
          { ...record, changed, made: '2023-01-01T00:00:00.000Z' },
        ]),
      );
      const kept = states.flatMap((state) => [
        versionOf(state, state.changed, 'a slip'),
        versionOf(state, '2024-03-20T00:00:00.000Z', 'a slip'),
      ]);
      const shop = fc
        .tuple(fc.subarray(states), fc.subarray(kept, { maxLength: 4 }))
        .map(([some, versions]) => {
          const all: KeptRecord[] = [...some, ...versions];
          return [...new Map(all.map((record) => [keyOf(record), record])).values()];
        });
      return fc.array(shop, { minLength: count, maxLength: count });
    });
