import fc from 'fast-check';
import type * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { checkRecord } from '../../src/exchange/shape/check-record';
import type {
  inspectionRecord,
  partRecord,
  shopRecord,
  versionRecord,
  workRecord,
} from '../../src/exchange/shape/records';
import type {
  InspectionRecord,
  PartRecord,
  ShopRecord,
  VersionRecord,
  WorkRecord,
} from '../../src/store/records';
import { inspection, part, shop, work } from '../store/support/samples';
import { shopRecords } from './support/shops';

/*
 * The compiler holds shapes and records against each other: a field that is in one of them alone, or
 * optional in one of them alone, is an error here.
 */
type Plain<T> = T extends string | number | boolean | undefined
  ? T
  : { -readonly [K in keyof T]: Plain<T[K]> };
type Whole<T> = T extends string | number | boolean | undefined
  ? T
  : { -readonly [K in keyof T]-?: Whole<T[K]> };
type Agree<A, B> = [Plain<A>, Plain<B>, Whole<A>, Whole<B>] extends [
  Plain<B>,
  Plain<A>,
  Whole<B>,
  Whole<A>,
]
  ? true
  : never;
/** The format is a number to the app and the one of today to the shape. */
type Agrees<A, B> = Agree<Omit<A, 'format'>, Omit<B, 'format'>>;

const AGREED: [
  Agrees<v.InferOutput<typeof partRecord>, PartRecord>,
  Agrees<v.InferOutput<typeof inspectionRecord>, InspectionRecord>,
  Agrees<v.InferOutput<typeof workRecord>, WorkRecord>,
  Agrees<v.InferOutput<typeof shopRecord>, ShopRecord>,
  Agrees<
    v.InferOutput<typeof versionRecord>,
    Omit<VersionRecord, 'record'> & Pick<v.InferOutput<typeof versionRecord>, 'record'>
  >,
] = [true, true, true, true, true];

describe('the shape of a record', () => {
  it('is what the compiler knows it as', () => {
    expect(AGREED).not.toContain(false);
  });

  it('fits every record that the app can write, and changes nothing of it', () => {
    fc.assert(
      fc.property(shopRecords, (records) => {
        for (const record of records) {
          const read = JSON.parse(JSON.stringify(record));
          expect(checkRecord(read)).toEqual({ ok: true, record });
        }
      }),
    );
  });

  it('is kept to in every field: one left out, one too many, or one of another kind is refused', () => {
    for (const good of [part('p'), inspection('i', 'p'), work('w', 'p'), shop()]) {
      const record = good as unknown as Record<string, unknown>;
      expect(checkRecord(record)).toMatchObject({ ok: true });
      for (const name of Object.keys(record)) {
        const { [name]: _, ...without } = record;
        expect(checkRecord(without), `without ${name}`).toMatchObject({ ok: false });
        expect(checkRecord({ ...record, [name]: null }), name).toMatchObject({ ok: false });
        expect(checkRecord({ ...record, [name]: [[]] }), name).toMatchObject({ ok: false });
      }
      expect(checkRecord({ ...record, more: 1 })).toMatchObject({ ok: false });
    }
  });
});

describe('what is refused, and how it is told', () => {
  const refused = (value: unknown) => {
    const checked = checkRecord(value);
    return checked.ok ? undefined : checked.message;
  };
  const nose = {
    ...{ kind: 'nose comparator', id: 's', faces: ['right', 'left'], base: 'bottom' },
    noseHeight: { text: '6', unit: 'mm' },
    indicatorHeight: { text: '80', unit: 'mm' },
    placings: [{ id: 'a', face: 'right', reading: { text: '34', unit: 'µm' } }],
  };
  const { format, made, changed } = part('p');
  const times = { format, made, changed };
  const version = {
    ...times,
    kind: 'version',
    of: 'part/q',
    id: changed,
    record: part('p'),
    why: '',
  };
  const read = (setup: object) => ({ ...inspection('i', 'p'), setups: [setup] });

  it.each([
    ['no record', 'some text', /no record of Highedge/],
    ['a newer record', { ...part('p'), format: 99 }, /newer version/],
    [
      'a number for a text',
      { ...part('p'), entry: { ...part('p').entry, name: 5 } },
      /^entry › name: expected string, found 5$/,
    ],
    ['an unknown field', { ...part('p'), more: 1 }, /^more: there is no such field$/],
    ['an id that leads elsewhere', { ...part('p'), id: '../shop' }, /^id: An id has/],
    [
      'an id that every object answers to',
      { ...part('p'), id: 'constructor' },
      /^id: An id that every/,
    ],
    [
      'a time that is none',
      { ...part('p'), changed: 'yesterday' },
      /^changed: A time is written like/,
    ],
    [
      'a time of another age',
      { ...part('p'), changed: '9999-01-01T00:00:00.000Z' },
      /^changed: A time/,
    ],
    [
      'a unit that there is not',
      read({ ...nose, noseHeight: { text: '6', unit: 'cubit' } }),
      /noseHeight › unit/,
    ],
    [
      'faces that do not go together',
      read({ ...nose, faces: ['right', 'top'] }),
      /do not look away/,
    ],
    [
      'a block that cannot stand so',
      read({ ...nose, base: 'right' }),
      /^setups › 1: The block cannot stand so$/,
    ],
    [
      'two readings of one id',
      read({ ...nose, placings: [nose.placings[0], nose.placings[0]] }),
      /one id/,
    ],
    ['a version of something else', version, /does not go with the record/],
  ])('%s', (_, value, message) => {
    expect(refused(value)).toMatch(message);
  });

  it('names that every object answers to, wherever they stand', () => {
    const text = JSON.stringify({ ...shop(), learnedSince: { NAME: part('p').made } });
    for (const name of ['__proto__', 'constructor', 'hasOwnProperty']) {
      expect(refused(JSON.parse(text.replace('NAME', name)))).toMatch(/is not allowed/);
    }
    expect(({} as Record<string, unknown>).made).toBeUndefined();
  });

  it('what is nested deeper, longer or more than any record', () => {
    const deep = JSON.parse(`${'['.repeat(5000)}${']'.repeat(5000)}`);
    expect(refused({ ...part('p'), deep })).toMatch(/nested deeper/);
    expect(refused(part('p', 'x'.repeat(30_000)))).toMatch(/longer than/);
    expect(refused({ ...part('p'), many: new Array(20_000).fill(0) })).toMatch(/longer than any/);
  });
});
