import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { lookThrough, pickInspections } from '../../src/exchange/csv/long-table';
import { readCsv } from '../../src/exchange/csv/read-csv';
import { rowsOf, tableKind } from '../../src/exchange/csv/table-kind';
import { writeCsv } from '../../src/exchange/csv/write-csv';

const HEAD = ['part', 'job', 'taken', 'face', 'height (mm)', 'reading (µm)'];
const turn = () => Promise.resolve();

const cell = fc.constantFrom('', 'a', 'two\nlines', 'a "quoted" one', "'=1", 'x'.repeat(500), ';');
const row = fc.tuple(cell, cell, cell, fc.constantFrom('right', 'side'), cell, fc.integer());
/** Tables of many pieces, in whatever ends of lines. */
const table = fc
  .tuple(
    fc.array(row, { minLength: 1, maxLength: 40 }),
    fc.integer({ min: 1, max: 40 }),
    fc.boolean(),
  )
  .map(([rows, times, isUnix]) => {
    const text = writeCsv(HEAD, Array.from({ length: times }, () => rows).flat());
    return isUnix ? text.replaceAll('\r\n', '\n') : text;
  });

describe('a long table', () => {
  it('is the same in turns as read at once, whatever stands where it is cut', async () => {
    await fc.assert(
      fc.asyncProperty(table, async (text) => {
        const all = readCsv(text);
        const [head, ...below] = all;
        const kind = tableKind(all);
        if (kind.kind === 'results') throw new Error('It has readings');
        const { inspections, rows } = await lookThrough(text, turn, () => {});
        expect(rows).toBe(below.length);
        expect(inspections).toEqual(kind.inspections);
        const asked = inspections.slice(-2);
        const picked = await pickInspections(text, asked, turn);
        expect(picked.head).toEqual(head);
        expect([...picked.rows]).toEqual(asked.map((one) => [one, rowsOf(one, head, below)]));
      }),
      { numRuns: 60 },
    );
  });

  it('has each bad row told by its line: the first hundred, and how many there are', async () => {
    const good = ['Block', 'two\nlines', '2024', 'right', 10, 4];
    const rows = Array.from({ length: 3000 }, (_, index) =>
      index % 10 === 9 ? good.with(3, 'side') : good,
    );
    const told = vi.fn();
    const { bad, allBad, rows: count } = await lookThrough(writeCsv(HEAD, rows), turn, told);
    expect([count, allBad, bad.length]).toEqual([3000, 300, 100]);
    // Each row has two lines, below the one of the headings.
    expect(bad[0]).toEqual({ line: 2 + 2 * 9, message: expect.stringContaining('‘side’') });
    expect(bad[99]?.line).toBe(2 + 2 * 999);
    expect(told.mock.calls.length).toBeGreaterThan(2);
    expect(told).toHaveBeenLastCalledWith(3000);
  });

  it('gives the screen a turn after every few rows', async () => {
    const rows = Array.from({ length: 20_000 }, () => ['Block', '', '', 'right', 10, 4]);
    const turns = vi.fn(turn);
    const text = writeCsv(HEAD, rows);
    await lookThrough(text, turns, () => {});
    expect(turns.mock.calls.length).toBeGreaterThan(text.length / 40_000);
  });

  it('says nothing of its rows where a heading has yet to be chosen', async () => {
    const text = 'face,dial,height (mm)\nside,4,10\n';
    expect(await lookThrough(text, turn, () => {})).toMatchObject({
      ...{ rows: 1, allBad: 0 },
      unknown: ['dial'],
    });
  });

  it('is refused where it is longer than any, or one inspection is', async () => {
    const look = (text: string) => lookThrough(text, turn, () => {});
    await expect(look('a,b\n'.repeat(500_002))).rejects.toThrow('more rows than are taken');
    await expect(look(`a,b\n"${'1,2\n'.repeat(100_000)}`)).rejects.toThrow('The row on line 2');
    const text = `face,up\n${'right,4\n'.repeat(5001)}`;
    const { inspections } = await look(text);
    await expect(pickInspections(text, inspections, turn)).rejects.toThrow('5001 rows');
  });
});
