import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newItem } from '../../src/entry/instruments';
import { matchHeading } from '../../src/exchange/csv/columns';
import { readCsv } from '../../src/exchange/csv/read-csv';
import { readReadings } from '../../src/exchange/csv/read-readings';
import { readingsCsv } from '../../src/exchange/csv/readings-table';
import { resultsCsv } from '../../src/exchange/csv/results-table';
import { writeCsv } from '../../src/exchange/csv/write-csv';
import { workOut } from '../../src/state/answers';
import { countedIds as ids } from '../entry/support/ids';
import { assumption, columnSetup, noseSetup } from '../entry/support/setups';
import { micro } from '../entry/support/typed';
import { BLOCK, compared } from '../state/support/inspections';
import { inspection, part } from '../store/support/samples';

/** As any program would read it. */
const parsed = (csv: string): string[][] => parse(csv, { bom: true });

describe('a table', () => {
  it('is read by a general reader as it was written, whatever stands in it', () => {
    const text = fc.string({ unit: 'grapheme' }).filter((one) => !/^[=+\-@\t\r\n]/.test(one));
    fc.assert(
      fc.property(fc.array(fc.tuple(text, fc.integer(), text), { minLength: 1 }), (rows) => {
        const csv = writeCsv(['a', 'b', 'c'], rows);
        expect(parsed(csv).slice(1)).toEqual(rows.map((row) => row.map(String)));
      }),
    );
  });

  it('runs nothing: text that begins as a formula is shown, and negative numbers stay numbers', () => {
    const harmful = ['=1+1', '+1', '-1+cmd', '@SUM(A1)', '\t=1', '\r=1', '=1\nmore', '-3'];
    const [, ...rows] = parsed(
      writeCsv(
        ['a', 'b'],
        harmful.map((one) => [one, -3.25]),
      ),
    );
    expect(rows).toEqual(harmful.map((one) => [`'${one}`, '-3.25']));
  });

  it('comes back as the same text', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.string(), fc.constant('x')), { minLength: 1 }), (rows) => {
        const same = rows.map(
          ([text, x]) => [text.replace(/\r\n?/g, '\n').replace(/^'/, ''), x] as const,
        );
        const read = readCsv(writeCsv(['a', 'b'], same));
        expect(read.slice(1).map(({ cells }) => cells[0])).toEqual(same.map(([text]) => text));
      }),
    );
  });
});

const READINGS = {
  ...inspection('i', 'p'),
  setups: [noseSetup({ right: '-3,25', left: '31' }), columnSetup(), assumption(micro('1'))],
  leftOut: { 'on left': { at: '2024-03-05T14:07:00.000Z', why: '=a chip' } },
};

describe('readings', () => {
  it('stand in a row each, with units in the headings and a decimal point', () => {
    const [headings = [], ...rows] = parsed(readingsCsv(part('p', 'Block'), [READINGS]));
    expect(headings).toContain('reading (µm)');
    expect(headings).toContain('height (mm)');
    const column = (name: string) => headings.indexOf(name);
    expect(rows[0]?.[column('reading (µm)')]).toBe('-3.25');
    expect(rows[0]?.[column('part')]).toBe('Block');
    expect(rows[0]?.[column('way')]).toBe('nose comparator');
    expect(rows[1]?.[column('left out because')]).toBe("'=a chip");
    const readings = columnSetup().placings.length * columnSetup().heights.length;
    expect(rows).toHaveLength(3 + readings);
  });

  it('count plus as the plunger pushed in, also from a dial that counts the other way', () => {
    const usual = newItem('indicator', ids());
    if (usual.kind !== 'indicator') throw new Error('It is an indicator');
    const nose = {
      ...noseSetup({ right: '34' }),
      indicator: { ...usual, plus: 'let out' as const },
    };
    const [headings = [], first = []] = parsed(
      readingsCsv(part('p'), [{ ...READINGS, setups: [nose] }]),
    );
    expect(first[headings.indexOf('reading (µm)')]).toBe('-34');
  });

  it('go out and come in as the same readings', () => {
    const csv = readingsCsv(part('p', 'Block'), [READINGS]);
    const [head, ...rows] = readCsv(csv);
    const columns = head!.cells.map(matchHeading);
    expect(columns).not.toContain(undefined);
    const read = readReadings(rows, columns, ids());
    expect(read.problems).toEqual([]);
    const again = { ...READINGS, setups: read.setups, leftOut: {} };
    const without = { ...READINGS, leftOut: {} };
    expect(readingsCsv(part('p', 'Block'), [again])).toBe(
      readingsCsv(part('p', 'Block'), [without]),
    );
  });
});

describe('a table from elsewhere', () => {
  const read = (text: string) => {
    const [head, ...rows] = readCsv(text);
    return readReadings(rows, head!.cells.map(matchHeading), ids());
  };

  it('may be copied from a spreadsheet: tabs, semicolons, decimal commas, other units', () => {
    const tabs = read(
      'Face\tNose height (mm)\tHeight (mm)\tReading (tenths)\nRight\t6\t80\t-1,5\n',
    );
    expect(tabs.problems).toEqual([]);
    expect(tabs.setups[0]).toMatchObject({
      ...{ kind: 'nose comparator', base: 'bottom' },
      placings: [{ face: 'right', reading: { text: '-1,5', unit: 'tenths' } }],
    });
    expect(read('face;up;thickness\nright;5;60,001').setups[0]).toMatchObject({
      ...{ kind: 'micrometer', faces: ['right', 'left'] },
      places: [{ thickness: { text: '60,001', unit: 'mm' } }],
    });
  });

  it('has every bad row named by its line, and the good ones taken', () => {
    const bad = read(
      [
        'face,stands on,height (mm),reading (µm),job',
        'right,bottom,10,4,"two',
        'lines"',
        'side,bottom,10,4,',
        'right,left,10,4,',
        'right,bottom,ten,4,',
        'right,bottom,10,,',
        'left,bottom,10,7,',
      ].join('\n'),
    );
    expect(bad.count).toBe(2);
    expect(bad.problems).toEqual([
      { line: 4, message: expect.stringContaining('‘side’ is no face') },
      { line: 5, message: 'The right does not stand up from the left' },
      { line: 6, message: expect.stringContaining('‘ten’ under ‘height’') },
      { line: 7, message: 'Nothing stands under ‘reading’' },
    ]);
  });
});

it('results stand in a row for each requirement, in full figures', () => {
  const taken = compared('i', '34', '31');
  const { findings } = workOut(taken, BLOCK).answer!;
  const [headings = [], first = []] = parsed(
    resultsCsv(part('p'), [{ inspection: taken, findings }]),
  );
  const cell = (name: string) => first[headings.indexOf(name)];
  expect(Number(cell('width (µm)'))).toBeCloseTo((3 / 148) * 90, 6);
  expect(cell('verdict')).toBe('in');
  expect(cell('tolerance (µm)')).toBe('5');
});
