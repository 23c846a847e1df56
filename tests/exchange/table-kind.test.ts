import { describe, expect, it } from 'vitest';
import { readCsv } from '../../src/exchange/csv/read-csv';
import { readingsCsv } from '../../src/exchange/csv/readings-table';
import { resultsCsv } from '../../src/exchange/csv/results-table';
import { rowsOf, tableKind } from '../../src/exchange/csv/table-kind';
import { noseSetup } from '../entry/support/setups';
import { inspection, part } from '../store/support/samples';

const read = (id: string, made: string, reading: string) => {
  return { ...inspection(id, 'p'), made, setups: [noseSetup({ right: reading, left: '31' })] };
};

describe('a table that was opened', () => {
  it('is told apart by its inspections, whatever part, job or day they are of', () => {
    const [one, two] = [
      read('i', '2024-03-05T14:07:00.000Z', '34'),
      read('j', '2024-03-06T14:07:00.000Z', '36'),
    ];
    const rows = readCsv(readingsCsv(part('p', 'Block'), [one, two]));
    const kind = tableKind(rows);
    expect(kind).toMatchObject({
      kind: 'readings',
      inspections: [
        { part: 'Block', taken: one.made, count: 2 },
        { part: 'Block', taken: two.made, count: 2 },
      ],
    });
    const [head, ...below] = rows;
    const [first] = kind.kind === 'readings' ? kind.inspections : [];
    expect(rowsOf(first!, head, below)).toEqual([rows[1], rows[2]]);
  });

  it('is one inspection where its rows name none', () => {
    const kind = tableKind(readCsv('face;up;thickness\nright;5;60,001\nright;9;60'));
    expect(kind).toMatchObject({ kind: 'readings', inspections: [{ part: '', taken: '' }] });
  });

  it('is told by its headings where it holds results', () => {
    expect(tableKind(readCsv(resultsCsv(part('p'), [])))).toEqual({ kind: 'results' });
  });
});
