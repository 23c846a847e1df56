import { readFile, writeFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { parse } from 'csv-parse/sync';
import { getDocumentProxy } from 'unpdf';
import { METHOD } from '../../src/core/inspection/method';
import { readingRows } from '../../src/entry/reading-rows';
import { LONG_INSPECTION, LONG_PART, longBackup } from './long-record';

/** Paper by its size in points, 72 to the inch. */
const PAPERS = [
  { name: 'A4', width: 595, height: 842 },
  { name: 'Letter', width: 612, height: 792 },
] as const;

/** Margins of a page in points, as record.css has them. */
const MARGIN = { top: (14 / 25.4) * 72, bottom: (14 / 25.4) * 72, side: (12 / 25.4) * 72 };

/** A piece of text and where its baseline begins, in points from the lower left corner. */
interface Piece {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

interface PdfPage {
  readonly size: readonly [number, number];
  readonly pieces: readonly Piece[];
  /** All of its text without spaces: where a line is broken is all one. */
  readonly text: string;
}

const plain = (text: string) => text.normalize('NFKC').replace(/\s+/g, '');

async function pagesOf(pdf: Buffer): Promise<readonly PdfPage[]> {
  const document = await getDocumentProxy(new Uint8Array(pdf));
  const numbers = Array.from({ length: document.numPages }, (_, index) => index + 1);
  return Promise.all(
    numbers.map(async (number) => {
      const page = await document.getPage(number);
      const { items } = await page.getTextContent();
      const pieces = items.flatMap((item): readonly Piece[] => {
        if (!('str' in item) || item.str.trim() === '') return [];
        const [x, y] = [Number(item.transform[4]), Number(item.transform[5])];
        return [{ text: item.str, x, y, width: item.width }];
      });
      const { width, height } = page.getViewport({ scale: 1 });
      return {
        size: [width, height],
        pieces,
        text: plain(pieces.map(({ text }) => text).join('')),
      };
    }),
  );
}

/** The long record, taken in as a backup. */
async function openLongRecord(page: Page): Promise<void> {
  await page.goto('/files');
  const sheet = page.getByRole('region', { name: 'Open a backup or a table' });
  await sheet.getByLabel('Choose a file, or drop it here').setInputFiles({
    name: 'long.highedge',
    mimeType: 'application/octet-stream',
    buffer: longBackup(),
  });
  await sheet.getByRole('button', { name: 'Merge it' }).tap();
  await expect(sheet).toContainText('A copy from before is kept');
  await page.goto(`/part/${LONG_PART.id}/record/${LONG_INSPECTION.id}`);
  await expect(page.getByRole('article')).toContainText('Long-winded block');
  await expect(page.getByRole('button', { name: 'Print, or save as PDF' })).toBeVisible();
  // Form is worked out by and by.
  await expect(page.getByRole('article')).not.toContainText('…', { timeout: 60_000 });
}

/** What the app says of the readings in full figures, as its table has it. */
async function results(page: Page): Promise<readonly Readonly<Record<string, string>>[]> {
  await page.goto(`/part/${LONG_PART.id}/table`);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Results', exact: true }).tap();
  const csv = await readFile(await (await download).path(), 'utf8');
  const rows: Record<string, string>[] = parse(csv, { bom: true, columns: true });
  return rows.filter(({ taken }) => taken === LONG_INSPECTION.made);
}

/** Texts of the rows of every table in the record, but for its drawings. */
function rowsOnScreen(page: Page): Promise<readonly string[]> {
  return page.getByRole('article').evaluate((paper) =>
    [...paper.querySelectorAll('tbody tr')].map((row) =>
      [...row.querySelectorAll('th, td')]
        .map((cell) => {
          const copy = cell.cloneNode(true) as Element;
          for (const drawing of copy.querySelectorAll('svg')) drawing.remove();
          return copy.textContent ?? '';
        })
        .join('\n'),
    ),
  );
}

test('the record as a PDF says what was entered and what was found, on either paper, no row cut', async ({
  page,
}, testInfo) => {
  await openLongRecord(page);
  const rows = await rowsOnScreen(page);
  const pdfs = [];
  for (const paper of PAPERS) {
    const pdf = await page.pdf({ format: paper.name, preferCSSPageSize: false });
    await writeFile(testInfo.outputPath(`record ${paper.name}.pdf`), pdf);
    pdfs.push({ paper, pages: await pagesOf(pdf) });
  }
  const found = await results(page);
  for (const { paper, pages } of pdfs) {
    expect(pages.length).toBeGreaterThan(2);
    for (const [index, { size, pieces }] of pages.entries()) {
      expect(Math.abs(size[0] - paper.width)).toBeLessThan(2);
      expect(Math.abs(size[1] - paper.height)).toBeLessThan(2);
      const inFoot = pieces.filter(({ y }) => y < MARGIN.bottom).map(({ text }) => text);
      expect(inFoot.join('')).toBe(`Page ${index + 1} of ${pages.length}`);
      for (const { text, x, y, width } of pieces.filter(({ y }) => y >= MARGIN.bottom)) {
        const within =
          x >= MARGIN.side - 1 &&
          x + width <= paper.width - MARGIN.side + 1 &&
          y <= paper.height - MARGIN.top + 1;
        expect(within, `${paper.name}: ‘${text}’ at ${x}, ${y}`).toBe(true);
      }
    }
    const all = pages.map(({ text }) => text).join('');

    // Every reading as entered, in a row of its own that stands on one page whole.
    const readings = readingRows(LONG_INSPECTION.setups);
    expect(readings.length).toBeGreaterThan(140);
    for (const [index, { name, value }] of readings.entries()) {
      const row = rows.find((text) => text.startsWith(`${index + 1}\n${name}`));
      expect(row, name).toContain(`${value.text} ${value.unit}`);
    }
    for (const row of rows) {
      const cells = row.split('\n').map(plain).filter(Boolean);
      const whole = pages.filter(({ text }) => cells.every((cell) => text.includes(cell)));
      expect(whole.length, `${paper.name}: ${row}`).toBeGreaterThan(0);
    }
    for (const row of rows.filter((text) => /^\d/.test(text))) {
      expect(all, `${paper.name}: ${row}`).toContain(plain(row));
    }

    // Each result in full figures, as it is shown: to the last place that stands there.
    expect(found).toHaveLength(LONG_PART.entry.requirements.length);
    const told = all.slice(all.indexOf('Requirementsandresults'));
    for (const { face, datum, verdict, ...numbers } of found) {
      const way = face === 'top' || datum === 'left' ? 'parallelto' : 'squareto';
      const from = told.toLowerCase().indexOf(`${face}${way}${datum}`);
      expect(from, `${face} to ${datum}`).toBeGreaterThan(-1);
      if (verdict === 'not fixed') {
        expect(told.slice(from, from + 60)).toContain('notfixedbythesereadings');
        continue;
      }
      const [, width, expanded] = /([\d.]+)±([\d.]+)\u03BCm/.exec(told.slice(from)) ?? [];
      expectShown(width, numbers['width (µm)']);
      expectShown(expanded, numbers['expanded uncertainty (µm)']);
      // With form the figure at the head is the one that the verdict is about.
      const [, head] = /([\d.]+)\u03BCm,[\d.]+to[\d.]+Withtheform/.exec(told.slice(from)) ?? [];
      const withForm = numbers['width with form (µm)'];
      if (withForm !== '') expectShown(head, withForm);
    }
    for (const said of SAID) expect(all).toContain(plain(said));
  }
});

test('wherever a page ends, no heading of a table stands at its foot with fewer than two rows', async ({
  page,
}) => {
  await openLongRecord(page);
  const paper = page.getByRole('article');
  for (let above = 0; above < 250; above += 10) {
    await paper.evaluate((element, millimetres) => {
      element.style.paddingTop = `${millimetres}mm`;
    }, above);
    const pages = await pagesOf(await page.pdf({ format: 'Letter' }));
    const [first, second] = readingRows(LONG_INSPECTION.setups);
    const heading = pages.findIndex(({ text }) => text.includes('Readings,asentered'));
    const rows = [`1${plain(first?.name ?? '')}Column`, `2${plain(second?.name ?? '')}Column`];
    for (const row of rows) expect(pages[heading]?.text, `${above} mm lower`).toContain(row);
  }
});

/** The shown number is the full one, rounded to its last place; an uncertainty may be rounded up. */
function expectShown(shown: string | undefined, full: string | undefined): void {
  expect(shown).toBeDefined();
  const places = (shown ?? '').split('.')[1]?.length ?? 0;
  expect(Math.abs(Number(shown) - Number(full))).toBeLessThanOrEqual(10 ** -places);
}

const SAID = [
  'Long-winded block',
  'Job 4711-B',
  'Tool steel, hardened',
  'The second shift',
  'a chip under the block',
  'That front and back are parallel within 2.25 µm: somebody’s word, not measured.',
  'the probability that the true value meets the drawing is 95 % or more',
  'ISO 14253-1',
  'U = k·u for a coverage of about 95 % (95.45 %)',
  'P400 paper, 45 seconds, Lightly',
  `version ${METHOD} of its method`,
  'inspection long-readings',
  'Readings finished 5 Mar 2024, 14:07',
];
