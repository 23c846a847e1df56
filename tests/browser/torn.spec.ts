import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { expect, type Page, test } from '@playwright/test';
import { allStored, putStored, type Stored } from './database';

const SAMPLE: Stored = JSON.parse(
  readFileSync(new URL('../store/samples/format-2.json', import.meta.url), 'utf8'),
);

const notices = (page: Page) => page.locator('.notices');

/** A copy of the record at `key` in which what lies at `way` is torn. */
function torn(key: string, way: readonly (string | number)[], by: unknown): unknown {
  const copy = structuredClone(SAMPLE[key]) as Record<string | number, unknown>;
  const last = way.at(-1) ?? '';
  const holder = way.slice(0, -1).reduce<Record<string | number, unknown>>((value, name) => {
    return value[name] as Record<string | number, unknown>;
  }, copy);
  holder[last] = by;
  return copy;
}

/** Opens the app on the sample with some of its records torn. */
async function openTorn(page: Page, records: Stored): Promise<void> {
  await page.goto('/');
  await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
  await putStored(page, { ...SAMPLE, ...records });
  await page.goto('/');
  await expect(page.getByRole('link', { name: /Block in inches/ }).first()).toBeVisible();
}

const keysOf = (kind: string) =>
  Object.keys(SAMPLE).filter((key) => (SAMPLE[key] as { kind: string }).kind === kind);

test('records that are torn inside are named and left, and every screen of the rest opens', async ({
  page,
}) => {
  const [first = ''] = keysOf('inspection').filter((key) => {
    return (SAMPLE[key] as { setups: unknown[] }).setups.length > 0;
  });
  const part = first.split('/')[1];
  const [work] = keysOf('work').filter((key) => key.startsWith(`chain/${part}/`));
  const [otherPart = ''] = keysOf('part').filter((key) => {
    return key !== `part/${part}` && !JSON.stringify(SAMPLE[key]).includes('inches');
  });
  const records = {
    [first]: torn(first, ['setups', 0, 'faces'], ['right', 'upwards']),
    ...(work && { [work]: torn(work, ['advised'], { mean: 'much' }) }),
    [otherPart]: torn(otherPart, ['entry', 'size', 'x'], null),
    shop: torn('shop', ['kit', 'plate'], { unit: 'µm' }),
  };
  const faults: string[] = [];
  page.on('pageerror', (fault) => faults.push(fault.message));
  await openTorn(page, records);
  await expect(notices(page)).toContainText('Kit and settings: damaged, and left untouched');
  await expect(notices(page)).toContainText('The part ‘');
  await page.goto(`/part/${part}`);
  await expect(notices(page)).toContainText('Readings of ‘');
  await expect(notices(page)).toContainText('Work on ‘');
  const [, good = ''] = keysOf('inspection').filter((key) => key.split('/')[1] === part);
  const id = good.split('/').at(-1);
  for (const at of ['', '/drawing', '/table', '/compare', `/readings/${id}`, `/record/${id}`]) {
    await page.goto(`/part/${part}${at}`);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(page.getByText('This screen does not open')).toHaveCount(0);
  }
  for (const at of ['/kit', '/drawer', '/rates', '/files', '/comparators', '/']) {
    await page.goto(at);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(page.getByText('This screen does not open')).toHaveCount(0);
  }
  const stored = await allStored(page);
  for (const [key, value] of Object.entries(records)) expect(stored[key]).toEqual(value);
  expect(faults).toEqual([]);
});

test('a screen that fails says so, gives the readings out, and lets the rest work', async ({
  page,
}) => {
  // What the browser itself refuses in some screens, so that drawing them fails.
  await page.addInitScript(() => {
    const told = Date.prototype.getHours;
    Date.prototype.getHours = function getHours() {
      if (location.pathname.startsWith('/part/')) throw new RangeError('No such clock');
      return told.call(this);
    };
  });
  await openTorn(page, {});
  await page
    .getByRole('link', { name: /Trial block/ })
    .first()
    .click();
  await expect(page.getByRole('heading', { name: 'This screen does not open' })).toBeVisible();
  await expect(page.locator('main')).toContainText('What was entered is kept as it was');
  await expect(page.locator('main')).toContainText('No such clock');
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save all readings as a backup' }).click();
  const text = gunzipSync(readFileSync(await (await coming).path())).toString();
  expect(text).toContain('Trial block');
  await page.getByRole('link', { name: 'To the bench', exact: true }).click();
  await page.getByRole('button', { name: 'New part' }).click();
  await expect(page.getByRole('heading', { name: 'This screen does not open' })).toHaveCount(0);
  await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toBeVisible();
});
