import { beforeEach, describe, expect, it } from 'vitest';
import { bringBack } from '../../src/store/bring-back';
import { FORMAT } from '../../src/store/records';
import { loadParts, save } from '../../src/store/shop-store';
import { emptyDatabase, putAnything, storedAt, storedKeys } from './support/database';
import { part } from './support/samples';

beforeEach(emptyDatabase);

const at = (minute: number) => `2024-03-05T14:0${minute}:00.000Z`;
const named = (name: string, minute: number) => ({ ...part('p', name), changed: at(minute) });

describe('what a page that is no more had taken down', () => {
  it('is brought to the disk, what is new and what was made from what lies there', async () => {
    await save([named('Before', 1)]);
    const keys = await bringBack([
      { record: named('After', 2), from: at(1) },
      { record: part('q') },
    ]);
    expect(keys).toEqual(['part/p', 'part/q']);
    expect((await loadParts()).records).toEqual([named('After', 2), part('q')]);
    expect(await storedKeys()).toEqual(['part/p', 'part/q']);
  });

  it('is nothing new where it had come to the disk all the same', async () => {
    await save([named('Typed', 2)]);
    await bringBack([{ record: named('Typed', 2), from: at(1) }]);
    expect(await storedKeys()).toEqual(['part/p']);
  });

  it('does not take the place of what has been typed since, and is kept beside it', async () => {
    await save([named('Since', 3)]);
    await bringBack([{ record: named('Taken down', 2), from: at(1) }]);
    expect(await storedAt('part/p')).toEqual(named('Since', 3));
    expect(await storedAt(`version/part/p/${at(2)}`)).toMatchObject({
      record: named('Taken down', 2),
    });
  });

  it('is put together with what another window had stored before', async () => {
    await save([{ ...named('Before', 2), closed: { at: at(2), inspection: 'i' } }]);
    await bringBack([{ record: named('After', 3), from: at(1) }]);
    expect((await loadParts()).records).toMatchObject([
      { entry: { name: 'After' }, closed: { inspection: 'i' } },
    ]);
  });

  it('may be of the first version, which took down records alone', async () => {
    const { changed: _, ...first } = part('p');
    await bringBack([{ ...first, format: 1 }]);
    expect((await loadParts()).records).toEqual([part('p')]);
  });

  it('is left out where it is no record, or of a newer version', async () => {
    expect(
      await bringBack([null, 7, {}, { record: 'x' }, { ...part('p'), format: FORMAT + 1 }]),
    ).toEqual([]);
    expect(await storedKeys()).toEqual([]);
  });

  it('of a damaged place sets aside what lies there', async () => {
    await putAnything('part/p', 'nonsense');
    await bringBack([{ record: part('p') }]);
    expect(await storedAt('part/p')).toEqual(part('p'));
    expect(await storedAt(`aside/part/p/${part('p').changed}`)).toBe('nonsense');
  });
});
