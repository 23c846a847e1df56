import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { FORMAT } from '../../src/store/records';
import { allStored, putStored, type Stored } from './database';
import { type } from './shop-floor';

const SAMPLE: Stored = JSON.parse(
  readFileSync(new URL('../store/samples/format-2.json', import.meta.url), 'utf8'),
);

/** The shop as a newer build would have left it: its format is one more, and it holds what this build does not know. */
const NEWER: Stored = Object.fromEntries(
  Object.entries(SAMPLE).map(([key, value]) => {
    return [key, { ...(value as object), format: FORMAT + 1, fromTheNewerBuild: [1, 2] }];
  }),
);

test('an older build over what a newer one wrote says so and leaves all of it as it is', async ({
  page,
}) => {
  await page.goto('/');
  await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
  await putStored(page, NEWER);
  const part = Object.keys(NEWER).find((key) => key.startsWith('part/'));
  await page.goto('/');
  const notices = page.locator('.notices');
  await expect(notices).toContainText('The part ‘Trial block’: written by a newer version');
  await expect(notices).toContainText('Kit and settings: written by a newer version');
  // What is changed meanwhile does not reach what the newer build wrote, and new work is kept.
  await page.goto(`/${part}`);
  await expect(page.locator('main')).toContainText('There is no such part in this browser');
  await page.goto('/');
  await page.getByRole('button', { name: 'New part' }).click();
  await type(page, 'Name', 'Begun meanwhile');
  await page.goto('/');
  await expect(page.getByRole('link', { name: /Begun meanwhile/ })).toBeVisible();
  const stored = await allStored(page);
  for (const [key, value] of Object.entries(NEWER)) expect(stored[key], key).toEqual(value);
});
