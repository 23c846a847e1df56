import { readFile } from 'node:fs/promises';
import { gunzipSync } from 'node:zlib';
import { expect, type Page, test } from '@playwright/test';
import { describePart } from './shop-floor';

const PART = { name: 'Kept block', size: ['60', '40', '90'], within: '0.005' } as const;

async function toFiles(page: Page): Promise<void> {
  await page.goto('/');
  await page.getByRole('link', { name: /Backup and files/ }).tap();
  await expect(page.getByRole('heading', { name: 'Backup and files' })).toBeVisible();
}

/** Backs everything up; the path of the file. */
async function backUp(page: Page): Promise<string> {
  await toFiles(page);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Back everything up' }).tap();
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/^highedge .*\.highedge$/);
  await expect(page.locator('main')).toContainText('within the last day');
  return file.path();
}

test('everything goes out as one file and comes in on another device, once', async ({
  page,
  browser,
}) => {
  await describePart(page, PART);
  const path = await backUp(page);
  const read = JSON.parse(gunzipSync(await readFile(path)).toString());
  expect(read).toMatchObject({ highedge: 'backup', version: 1 });
  expect(JSON.stringify(read.records)).toContain('Kept block');

  const other = await browser.newContext({ hasTouch: true, viewport: { width: 412, height: 915 } });
  const phone = await other.newPage();
  await toFiles(phone);
  const merge = phone.getByRole('region', { name: 'Open a backup' });
  const choose = async () => merge.getByLabel('Choose a file, or drop it here').setInputFiles(path);
  await choose();
  await expect(merge).toContainText('Nothing of it has been taken yet');
  await expect(merge).toContainText('New here1 part');
  await merge.getByRole('button', { name: 'Merge it' }).tap();
  await expect(merge).toContainText('A copy from before is kept');
  await choose();
  await expect(merge).toContainText('New herenothing');
  await expect(merge).toContainText('The same here already');
  await phone.getByRole('link', { name: 'Back to the bench' }).tap();
  await expect(phone.getByRole('link', { name: /Kept block/ })).toBeVisible();
  await phone.reload();
  await expect(phone.getByRole('link', { name: /Kept block/ })).toBeVisible();
  await phone.goto('/files');
  await expect(phone.getByRole('button', { name: /Put back what was here/ })).toHaveCount(1);
  await phone.getByRole('button', { name: /Put back what was here/ }).tap();
  await expect(merge).toContainText('1 part from the file removed');
  await expect(phone.getByRole('button', { name: /Put back what was here/ })).toHaveCount(0);
  await phone.getByRole('link', { name: 'Back to the bench' }).tap();
  await expect(phone.getByRole('link', { name: /Kept block/ })).toHaveCount(0);
  await other.close();
});

test('a file that is no backup is refused in plain words, and changes nothing', async ({
  page,
}) => {
  await describePart(page, PART);
  await toFiles(page);
  const merge = page.getByRole('region', { name: 'Open a backup' });
  await merge.getByLabel('Choose a file, or drop it here').setInputFiles({
    name: 'backup.highedge',
    mimeType: 'application/octet-stream',
    buffer: Buffer.from('<script>alert(1)</script>'),
  });
  await expect(merge).toContainText('This file cannot be taken. It is no backup of Highedge.');
  await expect(merge.getByRole('button', { name: /Merge/ })).toHaveCount(0);
});
