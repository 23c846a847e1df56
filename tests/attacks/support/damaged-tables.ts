import fc, { type Arbitrary } from 'fast-check';
import { FACES } from '../../../src/core/part/faces';
import { COLUMN_NAMES, headingOf } from '../../../src/exchange/csv/columns';
import { readingsCsv } from '../../../src/exchange/csv/readings-table';
import type { InspectionRecord } from '../../../src/store/records';
import { shopRecords } from '../../exchange/support/shops';
import { part } from '../../store/support/samples';

/** What stands where something else belongs. */
const strange: Arbitrary<string> = fc.oneof(
  fc.constantFrom('nose comparator', 'column', 'micrometer', 'assumed parallel', '1', '2'),
  fc.constantFrom('1e308', '1e-320', '-0', '0x10', '٣', '1.000,5', '½', '∞', '20+1.5', '1/0'),
  fc.constantFrom('=HYPERLINK("x")', '＝1+1', '@SUM(A1)', '\t=1', '<script>1</script>', '{{1}}'),
  fc.constantFrom('"', '""""', '"'.repeat(5000), "'", ';', '\t', '\n', '\r', '\0', '\u202E', '😀'),
  fc.constantFrom('NaN', 'Infinity', 'null', '__proto__', 'constructor', '(((((', '9'.repeat(3000)),
  fc.string({ unit: 'binary', maxLength: 8 }),
);

/** What belongs under a heading, most of the time. */
function cellUnder(name: string): Arbitrary<string> {
  const fits = /^(face|stands on)/.test(name)
    ? fc.constantFrom(...FACES, 'right', 'left', 'Bottom ')
    : fc.constantFrom('4', '-3.25', '12.5', '80', '');
  return fc.oneof({ weight: 15, arbitrary: fits }, { weight: 1, arbitrary: strange });
}

/** The usual ones leave the way of reading open: another one would refuse most rows. */
const USUAL = COLUMN_NAMES.filter((name) => name !== 'way' && name !== 'base').map((name) =>
  headingOf(name),
);

const heading: Arbitrary<string> = fc.oneof(
  { weight: 12, arbitrary: fc.constantFrom(...USUAL) },
  { weight: 1, arbitrary: fc.constantFrom('way', 'stands on', 'reading (constructor)', 'x', '') },
  { weight: 1, arbitrary: strange },
);

/** A table that somebody or something made up. */
const madeUp: Arbitrary<string> = fc
  .tuple(fc.array(heading, { maxLength: 6 }), fc.nat({ max: 6 }), fc.constantFrom(',', ';', '\t'))
  .chain(([others, rows, mark]) => {
    const head = ['face', 'up (mm)', 'reading (µm)', ...others];
    const row = fc.tuple(...head.map(cellUnder));
    return fc
      .array(row, { minLength: rows, maxLength: rows })
      .map((below) => [head, ...below].map((cells) => cells.join(mark)).join('\n'));
  });

/** A table as the app writes it. */
const ours: Arbitrary<string> = shopRecords.map((records) => {
  const inspections = records.filter((one): one is InspectionRecord => one.kind === 'inspection');
  return readingsCsv(part('p', '=the "block"; -1'), inspections);
});

const MANY_PLACINGS = Array.from({ length: 300 }, (_, at) => `right,${at},${at},1`).join('\n');

/** Far too much of something: seldom, for it takes its time. */
const huge: Arbitrary<string> = fc.constantFrom(
  `face${','.repeat(1_000_000)}`,
  `face,reading\n${'right,4\n'.repeat(6000)}`,
  `face,reading\nright,"${'""'.repeat(500_000)}`,
  `face,height,placing,reading\n${MANY_PLACINGS}`,
);

function seldom(value: Arbitrary<number>): Arbitrary<number | null> {
  const usual = { weight: 5, arbitrary: fc.constant(null) };
  return fc.oneof(usual, { weight: 1, arbitrary: value });
}

const harm = fc.record({
  cut: seldom(fc.double({ min: 0, max: 1, noNaN: true })),
  flip: seldom(fc.double({ min: 0, max: 0.999, noNaN: true })),
  ends: fc.constantFrom('\n', '\n', '\r\n', '\r'),
  letters: fc.constantFrom<BufferEncoding>('utf8', 'utf8', 'utf16le', 'latin1'),
  mark: fc.constantFrom(true, true, true, false),
});

/** Files that are tables, or were. */
export const damagedTables: Arbitrary<File> = fc
  .tuple(
    fc.oneof(
      { weight: 70, arbitrary: madeUp },
      { weight: 30, arbitrary: ours },
      { weight: 1, arbitrary: huge },
    ),
    harm,
  )
  .map(([text, { cut, flip, ends, letters, mark }]) => {
    const plain = text.replace(/^\uFEFF/, '').replace(/\r?\n/g, ends);
    const bytes = Buffer.from(mark ? `\uFEFF${plain}` : plain, letters);
    if (flip !== null && bytes.length > 0) bytes[Math.floor(flip * bytes.length)]! ^= 0x41;
    const left = cut === null ? bytes : bytes.subarray(0, cut * bytes.length);
    return new File([new Uint8Array(left)], 'readings.csv');
  });
