import { describe, expect, it } from 'vitest';
import { type UpgradeStep, upgrade } from '../../src/store/upgrades';
import { part, version } from './support/samples';

/** A step that writes down that it ran, and on what. */
const noting = (name: string): UpgradeStep => {
  return (record) => {
    const note = `${name}, given ${record.format}`;
    return { ...record, ran: [...((record.ran as string[]) ?? []), note] };
  };
};

const STEPS = new Map([
  [3, noting('three to four')],
  [1, noting('one to two')],
  [2, noting('two to three')],
]);

const at = (format: number) => ({ ...part('p'), format });

describe('a record of an older format', () => {
  it('goes through every step from its own on, in order', () => {
    const ran = ['one to two, given 1', 'two to three, given 2', 'three to four, given 3'];
    expect(upgrade(at(1), STEPS, 4)).toEqual({ ok: true, record: { ...at(4), ran } });
    expect(upgrade(at(2), STEPS, 4)).toEqual({ ok: true, record: { ...at(4), ran: ran.slice(1) } });
  });

  it('has the new number even where a step forgets it', () => {
    const forgetful = new Map([[1, ({ format: _, ...rest }: Record<string, unknown>) => rest]]);
    expect(upgrade(at(1), forgetful, 2)).toEqual({ ok: true, record: at(2) });
  });

  it('is damaged where a step is not there', () => {
    const gap = new Map([...STEPS].filter(([from]) => from !== 2));
    expect(upgrade(at(1), gap, 4)).toEqual({ ok: false, reason: 'damaged' });
    expect(upgrade(at(3), gap, 4)).toMatchObject({ ok: true });
  });

  it('is damaged where a step cannot make sense of it, so that the others open all the same', () => {
    const confused = new Map([
      [
        1,
        (record: Record<string, unknown>) => {
          return { ...record, name: (record.missing as { name: string }).name };
        },
      ],
    ]);
    expect(upgrade(at(1), confused, 2)).toEqual({ ok: false, reason: 'damaged' });
  });

  it('is itself left untouched', () => {
    const stored = Object.freeze(at(1));
    upgrade(stored, STEPS, 4);
    expect(stored).toEqual(at(1));
  });
});

describe('a record that needs no step', () => {
  it('of the format of today is taken as it is', () => {
    expect(upgrade(at(4), STEPS, 4)).toEqual({ ok: true, record: at(4) });
    expect(upgrade(part('p'))).toEqual({ ok: true, record: part('p') });
  });

  it('of a newer format is told apart and not touched', () => {
    expect(upgrade(at(5), STEPS, 4)).toEqual({ ok: false, reason: 'newer' });
  });
});

describe('a record of format 1, as the first version wrote it', () => {
  const { changed: _, ...first } = part('p');

  it('was last changed when it was made, as far as is known', () => {
    const upgraded = upgrade({ ...first, format: 1 });
    expect(upgraded).toEqual({
      ok: true,
      record: { ...part('p'), format: 2, changed: first.made },
    });
  });
});

describe('an earlier state that was kept', () => {
  it('goes through the steps of its own format, whatever the format of its keeping', () => {
    const kept = { ...version(part('p')), format: 3, record: at(2) };
    const ran = ['two to three, given 2', 'three to four, given 3'];
    expect(upgrade(kept, STEPS, 4)).toMatchObject({
      ok: true,
      record: { format: 4, ran: ran.slice(1), record: { ...at(4), ran } },
    });
  });

  it('is damaged or newer where the state in it is', () => {
    const holding = (record: object) => upgrade({ ...version(part('p')), record });
    expect(holding({ ...part('p'), entry: undefined })).toEqual({ ok: false, reason: 'damaged' });
    expect(holding(at(99))).toEqual({ ok: false, reason: 'newer' });
  });
});
