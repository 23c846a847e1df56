import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { baseOf, onAllFourSides } from '../../src/entry/four-sides';
import { newItem } from '../../src/entry/instruments';
import { withTraverseReading } from '../../src/entry/placings';
import { readingRows } from '../../src/entry/reading-rows';
import type { SetupEntry } from '../../src/entry/setup-entry';
import { matchHeading } from '../../src/exchange/csv/columns';
import { readCsv } from '../../src/exchange/csv/read-csv';
import { readReadings } from '../../src/exchange/csv/read-readings';
import { readingsCsv } from '../../src/exchange/csv/readings-table';
import { resultsCsv } from '../../src/exchange/csv/results-table';
import { tableText } from '../../src/exchange/csv/table-text';
import { writeCsv } from '../../src/exchange/csv/write-csv';
import { workOut } from '../../src/state/answers';
import type { InspectionRecord } from '../../src/store/records';
import { isWhole } from '../../src/store/whole/records';
import { countedIds as ids } from '../entry/support/ids';
import { assumption, columnSetup, noseSetup } from '../entry/support/setups';
import { micro, mm } from '../entry/support/typed';
import { BLOCK, compared } from '../state/support/inspections';
import { inspection, part } from '../store/support/samples';

/** As any program would read it. */
const parsed = (csv: string): string[][] => parse(csv, { bom: true });

/** Texts of the signs that matter to a spreadsheet, and others. */
const nasty = fc.oneof(
  fc.string(),
  fc
    .array(
      fc.constantFrom(
        ...'=+-@＝＋－＠\t\r\n;,|"\' ',
        'a',
        '1',
        'cmd',
        'HYPERLINK("x")',
        '<b>',
        'ä',
      ),
      { maxLength: 12 },
    )
    .map((pieces) => pieces.join('')),
);

describe('a table', () => {
  it('is read by a general reader as it was written, whatever stands in it', () => {
    const text = fc
      .string({ unit: 'grapheme' })
      .filter((one) => !/[=+\-@＝＋－＠\t\r\n]/.test(one));
    fc.assert(
      fc.property(fc.array(fc.tuple(text, fc.integer(), text), { minLength: 1 }), (rows) => {
        const csv = writeCsv(['a', 'b', 'c'], rows);
        expect(parsed(csv).slice(1)).toEqual(rows.map((row) => row.map(String)));
      }),
    );
  });

  it('runs nothing: text that begins as a formula is shown, and negative numbers stay numbers', () => {
    const signs = [
      '=1+1',
      '+1',
      '-1+cmd',
      '@SUM(A1)',
      '=1\nmore',
      '-3',
      '＝1+1',
      '＋1',
      '－1',
      '＠A1',
    ];
    const harmful = [...signs, ' =1', '"=1', "'=1", '\tmore', '\rmore', '\nmore'];
    const [, ...rows] = parsed(
      writeCsv(
        ['a', 'b'],
        harmful.map((one) => [one, -3.25]),
      ),
    );
    expect(rows).toEqual(harmful.map((one) => [`'${one}`, '-3.25']));
  });

  it('runs nothing either where a spreadsheet parts cells by other marks, and passes over the quotes', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(nasty, fc.double(), nasty), { minLength: 1 }), (rows) => {
        const csv = writeCsv(['a', 'b', 'c'], rows);
        const pieces = csv.slice(1).split(/[;\t\r\n]/);
        const cells = parsed(csv).flatMap(([first = '', , third = '']) => [first, third]);
        for (const cell of [...pieces, ...cells]) {
          expect(cell.replace(/^["\s]+/, '')).not.toMatch(/^[=+\-@＝＋－＠]/);
        }
        for (const [, number = ''] of parsed(csv).slice(1)) expect(number).not.toContain("'");
      }),
      { numRuns: 300 },
    );
  });

  it('comes back as the same text', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(nasty, fc.constant('x')), { minLength: 1 }), (rows) => {
        const same = rows.map(([text, x]) => [text.replace(/\r\n?/g, '\n'), x] as const);
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

  /** The inspection as it comes back from its own table. */
  const again = (one: InspectionRecord): InspectionRecord => {
    const [head, ...rows] = readCsv(readingsCsv(part('p', 'Block'), [one]));
    const columns = head!.cells.map(matchHeading);
    expect(columns).not.toContain(undefined);
    const { setups, leftOut, problems } = readReadings(rows, columns, ids());
    expect(problems).toEqual([]);
    const reasons = [...leftOut].map(([id, why]) => [id, { at: one.made, why }] as const);
    return { ...one, setups, leftOut: Object.fromEntries(reasons) };
  };

  it('go out and come in as the same readings, and what was left out stays left out', () => {
    const place = { up: mm('5'), across: mm(''), thickness: mm('60.001') };
    const over = { up: mm('5'), across: mm('7'), reading: micro('-2') };
    const pair = { faces: ['right', 'left'] as const };
    const setups: readonly SetupEntry[] = [
      ...[noseSetup({ right: '-3,25', left: '31' }), columnSetup(), assumption(micro('1'))],
      {
        ...{ kind: 'micrometer', id: 'm', ...pair },
        places: [
          { id: 'm1', ...place, takenOver: '2024-03-01T14:07:00.000Z' },
          { id: 'm2', ...place },
        ],
      },
      {
        ...{ kind: 'over the top', id: 'o', faces: ['top', 'bottom'] },
        places: [
          { id: 'o1', ...over },
          { id: 'o2', ...over },
        ],
      },
    ];
    const names = [...new Set(readingRows(setups).flatMap(({ leftOutAs }) => leftOutAs))];
    const reason = fc.oneof(nasty, fc.constantFrom('', ' ', 'a chip', 'beside the rest'));
    fc.assert(
      fc.property(fc.subarray(names), reason, (left, why) => {
        const trimmed = why.trim().replace(/\r\n?/g, '\n');
        const reasons = left.map((name) => [name, { at: READINGS.made, why: trimmed }] as const);
        const one = { ...READINGS, setups, leftOut: Object.fromEntries(reasons) };
        const read = again(one);
        const counted = (of: InspectionRecord) =>
          readingRows(of.setups).map(({ leftOutAs }) => {
            return !leftOutAs.some((name) => Object.hasOwn(of.leftOut ?? {}, name));
          });
        expect(counted(read)).toEqual(counted(one));
        expect(readingsCsv(part('p', 'Block'), [read])).toBe(
          readingsCsv(part('p', 'Block'), [one]),
        );
      }),
    );
  });

  it('come back with the same answer, whatever was left out', () => {
    const one = { ...compared('i', '34', '31'), setups: [columnSetup(), assumption(micro('1'))] };
    const [first] = readingRows(one.setups);
    const leftOut = { [first!.leftOutAs[1]!]: { at: one.made, why: 'It did not sit' } };
    for (const inspection of [one, { ...one, leftOut }]) {
      const widths = ({ answer }: ReturnType<typeof workOut>) =>
        answer?.findings.map((finding) => finding.fixed && finding.zone.width);
      expect(widths(workOut(again(inspection), BLOCK))).toEqual(
        widths(workOut(inspection, BLOCK))?.map((width) =>
          typeof width === 'number' ? expect.closeTo(width, 9) : width,
        ),
      );
    }
  });
});

describe('a table from elsewhere', () => {
  const read = (text: string) => {
    const [head, ...rows] = readCsv(text);
    return readReadings(rows, head!.cells.map(matchHeading), ids());
  };

  it('takes readings of two sections for two settings, whatever setup they are said to be of', () => {
    const { setups, count } = read(
      'Setup;Face;Base;Nose height (mm);Height (mm);Reading (µm)\n' +
        '1;right;bottom;6;80;34\n1;back;bottom;6;80;12\n1;top;right;6;80;-5\n',
    );
    expect(count).toBe(3);
    const placed = setups.map((one) => 'placings' in one && one.placings.map(({ face }) => face));
    expect(placed).toEqual([['right', 'top'], ['back']]);
    expect(isWhole({ ...inspection('i', 'p'), setups })).toBe(true);
  });

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

  it('has a column that the block was turned under on all four sides as one, on what it stood each time', () => {
    const four = onAllFourSides(columnSetup({ heights: ['10', '50'] }), ids());
    const read = four.placings.reduce(
      (setup, { id }) =>
        ['low', 'high'].reduce(
          (one, height) => withTraverseReading(one, { placing: id, height }, '7'),
          setup,
        ),
      four,
    );
    const written = readingsCsv(part('p'), [{ ...inspection('i', 'p'), setups: [read] }]);
    const [head, ...rows] = readCsv(written);
    const { setups, problems } = readReadings(rows, head!.cells.map(matchHeading), ids());
    expect(problems).toEqual([]);
    const isSame = (setup: SetupEntry | undefined) =>
      setup?.kind === 'column' && {
        base: setup.base,
        placings: setup.placings.map((placing) => [placing.face, baseOf(setup, placing)]),
      };
    expect(setups).toHaveLength(1);
    expect(isSame(setups[0])).toEqual(isSame(read));
  });

  it('loses no reading that stands at the same height of the same placing', () => {
    const { setups, count } = read(
      'face,height (mm),placing,reading (µm)\nright,10,1,4\nright,10,1,5\nright,20,1,6\nright,10,1,7',
    );
    expect(count).toBe(4);
    const [column] = setups;
    if (column?.kind !== 'column') throw new Error('It is a column');
    const taken = column.placings.flatMap(({ readings }) => Object.values(readings));
    expect(taken.map(({ text }) => text).filter(Boolean)).toEqual(['4', '6', '5', '7']);
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
        ',bottom,10,7,',
      ].join('\n'),
    );
    expect(bad.count).toBe(2);
    expect(bad.problems).toEqual([
      { line: 4, message: expect.stringContaining('‘side’ is no face') },
      { line: 5, message: 'The right does not stand up from the left' },
      { line: 6, message: expect.stringContaining('‘ten’ under ‘height’') },
      { line: 7, message: 'Nothing stands under ‘reading’' },
      { line: 9, message: 'Nothing stands under ‘face’' },
    ]);
  });

  it('has a time that is none told, where a reading was taken over', () => {
    const { setups, problems } = read(
      'face,up,thickness,taken over from\nright,5,60,2024-03-05\nright,9,60,some day',
    );
    expect(setups[0]).toMatchObject({ places: [{ takenOver: '2024-03-05T00:00:00.000Z' }] });
    expect(problems).toEqual([
      { line: 3, message: '‘some day’ under ‘taken over from’ is no time' },
    ]);
  });

  it('counts a word that is said twice as long as one of the rows does', () => {
    const rows = (second: string) =>
      `face,parallel within,left out because\nright,1,warm\nright,1,${second}`;
    expect(read(rows('')).leftOut.size).toBe(0);
    expect([...read(rows('also')).leftOut.values()]).toEqual(['also']);
  });
});

describe('a table that no shop would take', () => {
  const HEAD = 'face,height (mm),placing,reading (µm)';
  const read = (text: string) => {
    const [head, ...rows] = readCsv(text);
    return readReadings(rows, head!.cells.map(matchHeading), ids());
  };

  it('of a million columns is refused', () => {
    expect(() => readCsv(`face${','.repeat(1_000_000)}`)).toThrow('The row on line 1 is longer');
    expect(() => readCsv(`face${','.repeat(300)}`)).toThrow('more columns than any table');
  });

  it('of more rows or letters than any is refused', () => {
    expect(() => readCsv('a,b\n'.repeat(500_002))).toThrow('more rows than are taken');
    expect(() => readCsv('x'.repeat(64_000_001))).toThrow('more rows than are taken');
  });

  it('of one row without end is refused, by the line that it begins on', () => {
    expect(() => readCsv(`a,b\n1,"2\n${'3,4\n'.repeat(100_000)}`)).toThrow('The row on line 2');
  });

  it('of a column with heights and placings without end is refused', () => {
    const rows = Array.from({ length: 400 }, (_, at) => `right,${at},${at},1`);
    expect(() => read([HEAD, ...rows].join('\n'))).toThrow('400 heights at 400 placings');
  });

  it('has a cell without end told by its line, in few words', () => {
    const { count, problems } = read(`${HEAD}\nright,1,1,${'9'.repeat(100_000)}\nright,2,1,4`);
    expect(count).toBe(1);
    expect(problems).toEqual([{ line: 2, message: 'A cell in it has more than 1000 characters' }]);
  });

  it('tells its unit in brackets of either kind, after a comma, or after the name alone', () => {
    const micrometres = [
      'Reading µm',
      'reading [um]',
      'READING (µm)',
      'reading, um',
      'Reading in µm',
    ];
    for (const heading of micrometres) {
      expect(matchHeading(heading)).toEqual({ column: 'reading', unit: 'µm' });
    }
    expect(matchHeading('nose height mm')).toEqual({ column: 'noseHeight', unit: 'mm' });
    expect(matchHeading('height in')).toEqual({ column: 'height', unit: 'in' });
    expect(matchHeading('reading tenths')).toEqual({ column: 'reading', unit: 'tenths' });
    expect(matchHeading('reading nm')).toBeUndefined();
    expect(matchHeading('stands on')).toMatchObject({ column: 'base' });
  });

  it('with a name that every object answers to as a unit has a column of no meaning', () => {
    for (const name of ['constructor', 'toString', '__proto__', 'hasOwnProperty']) {
      expect(matchHeading(`reading (${name})`)).toBeUndefined();
    }
  });
});

describe('the letters of a table', () => {
  const TEXT = 'face,reading (µm)\nright,4\n';
  const wide = (order: 'le' | 'be') => {
    const bytes = Buffer.from(`\uFEFF${TEXT}`, 'utf16le');
    return new Uint8Array(order === 'le' ? bytes : bytes.swap16());
  };

  it.each([
    ['UTF-8', new TextEncoder().encode(TEXT)],
    ['UTF-8 with its mark', new TextEncoder().encode(`\uFEFF${TEXT}`)],
    ['UTF-16', wide('le')],
    ['UTF-16 the other way round', wide('be')],
    ['those of Windows', new Uint8Array(Buffer.from(TEXT, 'latin1'))],
  ])('may be %s', async (_, bytes) => {
    const [head, row] = readCsv(await tableText(new Blob([bytes])));
    expect(matchHeading(head!.cells[1]!)).toEqual({ column: 'reading', unit: 'µm' });
    expect(row!.cells).toEqual(['right', '4']);
  });

  it('are not read where there are more than any table has', async () => {
    const endless = { size: 9e9, arrayBuffer: () => Promise.reject(new Error('It was read')) };
    await expect(tableText(endless as unknown as Blob)).rejects.toThrow('more rows than are taken');
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
