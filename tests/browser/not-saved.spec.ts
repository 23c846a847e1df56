import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { allStored } from './database';
import { describePart, readBothSides, sides, takeAsParallel, type } from './shop-floor';

const FIRST = { nose: '6', indicator: '80', right: '34', left: '31' };

const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
const notSaved = (page: Page) => page.locator('.notice').filter({ hasText: 'Not saved:' });

/** The backup that the notice offers, unpacked. */
async function fileOf(page: Page): Promise<string> {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).click();
  return gunzipSync(readFileSync(await (await coming).path())).toString();
}

/** A page of the same origin that is not the app. */
async function neighbour(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto('/robots.txt');
  return page;
}

test('a full disk is told at once, and what was typed is saved when there is room', async ({
  page,
  baseURL,
}) => {
  const disk = await page.context().newCDPSession(page);
  await disk.send('Storage.overrideQuotaForOrigin', { origin: baseURL ?? '', quotaSize: 1 });
  await page.goto('/?example');
  await type(page, 'Right side', '41');
  await type(page, 'Left side', '29');
  await expect(notSaved(page)).toContainText('no room left');
  // Nothing stands still meanwhile.
  await expect(sides(page)).toContainText('Right leans out at the top');
  const text = await fileOf(page);
  expect(text).toContain('"text":"29"');
  expect(text).toContain('"text":"41"');
  expect(text).toContain('Example block');
  await disk.send('Storage.overrideQuotaForOrigin', { origin: baseURL ?? '' });
  await expect(notSaved(page)).toHaveCount(0);
  await page.reload();
  await expect(field(page, 'Left side')).toHaveValue('29');
});

test('a database that stands still is told, and what was typed is saved when it moves', async ({
  page,
  context,
}) => {
  await page.goto('/?example');
  await type(page, 'Right side', '41');
  const other = await neighbour(context);
  await other.evaluate(async () => {
    const held = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open('highedge');
      request.onsuccess = () => resolve(request.result);
    });
    Object.assign(window, { held });
    // It waits for whoever holds the database, and all who come after wait for it.
    indexedDB.deleteDatabase('highedge');
  });
  await type(page, 'Left side', '29');
  await expect(notSaved(page)).toContainText('does not answer');
  expect(await fileOf(page)).toContain('"text":"29"');
  await other.evaluate(() => (window as unknown as { held: IDBDatabase }).held.close());
  await expect(notSaved(page)).toHaveCount(0);
});

test('a database that a newer version has taken over is told, and nothing is lost', async ({
  page,
  context,
}) => {
  await page.goto('/?example');
  await type(page, 'Right side', '41');
  const newer = await neighbour(context);
  const keys = await newer.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const request = indexedDB.open('highedge', 2);
        request.onsuccess = () => {
          const all = request.result.transaction('records').objectStore('records').count();
          all.onsuccess = () => resolve(all.result);
        };
      }),
  );
  expect(keys).toBeGreaterThan(1);
  await type(page, 'Left side', '29');
  await expect(notSaved(page)).toContainText('a newer version of the app');
  expect(await fileOf(page)).toContain('"text":"29"');
});

test('where the browser has no database the whole job works, and can be taken out as a file', async ({
  page,
}) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', { value: undefined });
    Object.defineProperty(window, 'localStorage', { value: undefined });
  });
  await describePart(page, { name: 'Trial block', size: ['60', '40', '90'], within: '0.005' });
  await expect(notSaved(page)).toBeVisible();
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await readBothSides(page, FIRST);
  await takeAsParallel(page, '1');
  await expect(sides(page)).toContainText('1.82 ±');
  const text = await fileOf(page);
  for (const typed of ['Trial block', '"34"', '"31"']) expect(text).toContain(typed);
  // There and back again, all is still there.
  await page.getByRole('link', { name: 'Back to the part' }).tap();
  await page.getByRole('link', { name: 'Go on with the readings' }).tap();
  await expect(field(page, 'Right side')).toHaveValue('34');
});

test('where local storage is refused all is saved in the database', async ({ page }) => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('Full', 'QuotaExceededError');
    };
  });
  await page.goto('/?example');
  await type(page, 'Right side', '41');
  await type(page, 'Left side', '29');
  await expect(sides(page)).toContainText('Right leans out at the top');
  await expect(notSaved(page)).toHaveCount(0);
  await page.reload();
  await expect(field(page, 'Left side')).toHaveValue('29');
});

test('a database that dies in the midst of a write is told at once, and the write is done again', async ({
  page,
}) => {
  await page.goto('/?example');
  await type(page, 'Right side', '41');
  await page.evaluate(() => {
    const { put } = IDBObjectStore.prototype;
    // As where the browser closes the database: what is under way is given up, nothing can be begun.
    IDBObjectStore.prototype.put = function (...values) {
      const request = put.apply(this, values);
      this.transaction.abort();
      this.transaction.db.close();
      return request;
    };
    Object.assign(window, {
      mend: () => {
        IDBObjectStore.prototype.put = put;
      },
    });
  });
  await type(page, 'Left side', '29');
  await expect(notSaved(page)).toBeVisible();
  // It stays on the screen, is answered, and goes on.
  await expect(sides(page)).toContainText('Right leans out at the top');
  await type(page, 'Right side', '43');
  expect(await fileOf(page)).toContain('"text":"43"');
  await page.evaluate(() => (window as unknown as { mend: () => void }).mend());
  await expect(notSaved(page)).toHaveCount(0);
  await page.reload();
  await expect(field(page, 'Left side')).toHaveValue('29');
  await expect(field(page, 'Right side')).toHaveValue('43');
});

test('a database that the browser clears takes nothing off the screen, and what is typed brings the part back', async ({
  page,
  baseURL,
}) => {
  await page.goto('/?example');
  await type(page, 'Right side', '41');
  await expect(sides(page)).toBeVisible();
  const browser = await page.context().newCDPSession(page);
  await browser.send('Storage.clearDataForOrigin', {
    origin: baseURL ?? '',
    storageTypes: 'indexeddb',
  });
  await expect(field(page, 'Right side')).toHaveValue('41');
  await type(page, 'Left side', '29');
  await expect(sides(page)).toContainText('Right leans out at the top');
  await expect(notSaved(page)).toHaveCount(0);
  await expect
    .poll(async () => Object.keys(await allStored(page)).filter((key) => /^(part|chain)/.test(key)))
    .toHaveLength(2);
  await page.reload();
  await expect(field(page, 'Right side')).toHaveValue('41');
  await expect(field(page, 'Left side')).toHaveValue('29');
});
