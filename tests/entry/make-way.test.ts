import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Face } from '../../src/core/part/faces';
import { addHeight } from '../../src/entry/column-heights';
import { onAllFourSides } from '../../src/entry/four-sides';
import { withWay } from '../../src/entry/make-way';
import { newSetup } from '../../src/entry/new-setup';
import { seatAgain } from '../../src/entry/placings';
import { readWithItem } from '../../src/entry/read-with';
import type {
  ColumnSetup,
  NoseComparatorSetup,
  SetupEntry,
  SetupKind,
} from '../../src/entry/setup-entry';
import { countedIds } from './support/ids';

const newId = countedIds();
const fresh = (kind: SetupKind, faces: readonly [Face, Face], base: Face): SetupEntry =>
  newSetup(kind, faces, base, { size: 'mm', reading: 'µm' }, newId);
const standing = (kind: SetupKind) => fresh(kind, ['right', 'left'], 'bottom');
const add = (setups: readonly SetupEntry[], ...added: readonly SetupEntry[]) =>
  withWay(setups, added, ({ kind, faces, ...rest }) =>
    fresh(kind, faces, 'base' in rest ? rest.base : faces[1]),
  );

const nose = standing('nose comparator') as NoseComparatorSetup;
const column = standing('column') as ColumnSetup;
const micrometer = standing('micrometer');

describe('an empty sheet that nobody has touched', () => {
  it('makes way for another way of reading the same, which takes its place', () => {
    expect(add([nose, micrometer], column)).toEqual([column, micrometer]);
    expect(add([column], nose)).toEqual([nose]);
    expect(add([micrometer], standing('assumed parallel'))).toMatchObject([
      { kind: 'assumed parallel' },
    ]);
  });

  it('stays beside what it is read together with', () => {
    expect(add([nose], micrometer)).toEqual([nose, micrometer]);
    expect(add([nose], standing('face map'))).toHaveLength(2);
  });

  it('stays where the new one is of other faces, or of the same on another base', () => {
    const front = fresh('column', ['front', 'back'], 'bottom');
    expect(add([nose], front)).toEqual([nose, front]);
    const lying = fresh('column', ['right', 'left'], 'front');
    expect(add([nose], lying)).toEqual([nose, lying]);
    const maps = (['top', 'bottom'] as const).map((face, index) =>
      fresh('face map', [face, index === 0 ? 'bottom' : 'top'], 'bottom'),
    );
    expect(add(maps.slice(0, 1), ...maps.slice(1))).toEqual(maps);
  });

  it('is none where something was chosen in it', () => {
    const fourSided = onAllFourSides(nose, newId);
    expect(add([fourSided], column)).toEqual([fourSided, column]);
    const own = { kind: 'comparator', id: 'own', name: 'Bench comparator' } as const;
    const chosen = readWithItem(nose, 'comparator', own);
    expect(add([chosen], column)).toEqual([chosen, column]);
  });

  it('may have more empty rows than it had', () => {
    expect(add([seatAgain(nose, nose.placings[0]!.id, newId)], column)).toEqual([column]);
    expect(add([addHeight(column, newId)], nose)).toEqual([nose]);
  });
});

describe('a sheet that anything was typed in', () => {
  const kinds = fc.constantFrom<SetupKind>(
    'nose comparator',
    'column',
    'micrometer',
    'assumed parallel',
  );

  it('stays as it is, whatever is chosen', () => {
    fc.assert(
      fc.property(
        kinds,
        kinds,
        fc.nat(),
        fc.stringMatching(/^[0-9]{1,3}$/),
        (old, next, at, text) => {
          const typed = typedAt(standing(old), at, text);
          const added = standing(next);
          expect(add([typed], added)).toEqual([typed, added]);
        },
      ),
    );
  });
});

/** The setup with `text` in one of its empty fields. */
function typedAt(setup: SetupEntry, at: number, text: string): SetupEntry {
  const empty = [...JSON.stringify(setup).matchAll(/"text":""/g)];
  const { index } = empty[at % empty.length]!;
  const json = JSON.stringify(setup);
  return JSON.parse(`${json.slice(0, index)}"text":"${text}"${json.slice(index + 9)}`);
}
