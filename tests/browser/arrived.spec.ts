import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { untilReadyForOffline } from './offline';
import { describePart } from './shop-floor';

const TABLE = [
  'face,nose height (mm),height (mm),reading (µm)',
  'right,6,80,34',
  'left,6,80,31',
].join('\n');

const PART = { name: 'Shared to', size: ['60', '40', '90'], within: '0.005' } as const;

interface Shared {
  readonly files?: readonly { name: string; mimeType: string; buffer: Buffer }[];
  readonly title?: string;
  readonly text?: string;
}

/** Sends what another app shares as the system does: a form by POST to the address of the manifest. */
async function share(page: Page, { files = [], title = '', text = '' }: Shared): Promise<void> {
  const { share_target: target, start_url: start } = await page.evaluate(async () => {
    const link = document.querySelector<HTMLLinkElement>('link[rel=manifest]');
    return (await fetch(link?.href ?? '')).json();
  });
  const action = new URL(target.action, new URL(start, page.url())).href;
  const { params } = target;
  await page.goto('about:blank');
  await page.setContent(
    `<form method="${target.method}" enctype="${target.enctype}" action="${action}">
      <input name="${params.title}"><textarea name="${params.text}"></textarea>
      ${files.length > 0 ? `<input type="file" multiple name="${params.files[0].name}">` : ''}
      <button>Share</button>
    </form>`,
  );
  await page.locator(`[name=${params.title}]`).fill(title);
  await page.locator(`[name=${params.text}]`).fill(text);
  if (files.length > 0) await page.locator('[type=file]').setInputFiles([...files]);
  await page.getByRole('button', { name: 'Share' }).click();
  await expect(page.getByRole('heading', { name: 'Backup and files' })).toBeVisible();
}

const sheet = (page: Page) => page.getByRole('region', { name: 'Open a backup or a table' });

/** Takes the shared table into the part, and looks at what came in. */
async function takeInto(page: Page, name: string): Promise<void> {
  await sheet(page).getByRole('button', { name }).tap();
  await page.getByRole('button', { name: 'Take 2 readings as a new inspection' }).tap();
  await expect(page.getByRole('textbox', { name: 'Right side' })).toHaveValue('34');
}

test('a table that is shared as text goes to the part that is chosen, once, without a network', async ({
  page,
  context,
}) => {
  await describePart(page, PART);
  await untilReadyForOffline(page);
  await context.setOffline(true);
  await share(page, { title: 'From the sheet', text: TABLE });
  await expect(sheet(page)).toContainText('‘From the sheet’ is a table with 2 rows');
  await takeInto(page, 'Shared to');
  await page.goto('/files');
  await expect(sheet(page)).toBeVisible();
  await page.waitForTimeout(300);
  await expect(sheet(page)).not.toContainText('From the sheet');
});

test('a backup that is shared as a file is looked over, and others beside it are told', async ({
  page,
}) => {
  await describePart(page, PART);
  await untilReadyForOffline(page);
  await page.goto('/files');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Back everything up' }).tap();
  const file = await download;
  const buffer = await readFile(await file.path());
  const mimeType = 'application/octet-stream';
  await share(page, {
    files: [
      { name: file.suggestedFilename(), mimeType, buffer },
      { name: 'another one.csv', mimeType: 'text/csv', buffer: Buffer.from(TABLE) },
    ],
  });
  await expect(sheet(page)).toContainText('Nothing of it has been taken yet');
  await expect(sheet(page)).toContainText('The same here already');
  await expect(sheet(page)).toContainText('One more file came along');
});

test('a share of nothing, or of what is no form, opens the app and nothing else', async ({
  page,
}) => {
  await page.goto('/');
  await untilReadyForOffline(page);
  await share(page, {});
  await page.waitForTimeout(300);
  await expect(sheet(page).getByRole('status')).toHaveText('');
  const address = await page.evaluate(async () => {
    const answer = await fetch('/share', { method: 'POST', body: 'no form' });
    return new URL(answer.url).pathname;
  });
  expect(address).toBe('/files');
});

test('a file that is dropped on any screen is opened, and the screen is not left for it', async ({
  page,
}) => {
  await describePart(page, PART);
  await page.evaluate((text) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([text], 'dropped.csv', { type: 'text/csv' }));
    document.body.dispatchEvent(
      new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }),
    );
  }, TABLE);
  await expect(sheet(page)).toContainText('‘dropped.csv’ is a table with 2 rows');
  await takeInto(page, 'Shared to');
});

test('a file that the system opens the app with is taken on any screen', async ({ page }) => {
  // The browser's own queue hands over only what the system has opened.
  await page.addInitScript((text) => {
    const file = new File([text], 'opened.csv', { type: 'text/csv' });
    const launched = { files: [{ getFile: async () => file }] };
    Object.defineProperty(window, 'launchQueue', {
      value: { setConsumer: (take: (params: unknown) => void) => take(launched) },
    });
  }, TABLE);
  await page.goto('/kit');
  await expect(sheet(page)).toContainText('‘opened.csv’ is a table with 2 rows');
});

test('a table of results is told as what it is', async ({ page }) => {
  await describePart(page, PART);
  await page.getByRole('link', { name: 'Readings as a table' }).tap();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Results', exact: true }).tap();
  const path = await (await download).path();
  await page.goto('/files');
  await sheet(page).getByLabel('Choose a file, or drop it here').setInputFiles(path);
  await expect(sheet(page)).toContainText('holds results');
});
