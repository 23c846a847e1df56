import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { gzipSync } from 'node:zlib';
import { expect, type Page } from '@playwright/test';
import { endLine, headLine } from '../../src/exchange/backup/format';
import { keyOf } from '../../src/store/keys';
import type { StoredRecord } from '../../src/store/records';
import { isSame } from '../../src/store/three-way';
import { upgrade } from '../../src/store/upgrades';
import { putNewerBuild } from '../browser/newer-build';
import { untilReadyForOffline } from '../browser/offline';
import { startServer } from '../browser/server';
import { randomFrom } from '../core/support/random';
import { startBrowser } from './killable-browser';

/** Everything in the app's database, by its key. */
export type Stored = Readonly<Record<string, unknown>>;

/** What is under way when the browser is killed. */
export const WORKS = ['import', 'backup', 'upgrade', 'update'] as const;
export type Work = (typeof WORKS)[number];

/** ms after its beginning that a work is killed, at the most. */
const LONGEST: Readonly<Record<Work, number>> = {
  import: 1500,
  backup: 800,
  upgrade: 1500,
  update: 1500,
};

/** Parts in the backup that is taken in. */
const PARTS = 150;

const SAMPLE: Stored = JSON.parse(
  readFileSync(new URL('../store/samples/format-1.json', import.meta.url), 'utf8'),
);

/**
 * Kills a browser in the midst of a work, starts it again, and throws where anything that had been
 * there before is not there now, or anything is there only in part.
 */
export async function killAtWork(
  work: Work,
  folder: string,
  build: string,
  seed: number,
): Promise<void> {
  const site = join(folder, `site ${seed}`);
  cpSync(build, site, { recursive: true });
  const server = await startServer(site);
  const profile = join(folder, `profile ${seed}`);
  let browser = await startBrowser(profile);
  try {
    await openWithSample(browser.page, server.url);
    const before = await everything(browser.page);
    await begin(work, browser.page, { folder, site });
    await pause(randomFrom(seed).between(0, LONGEST[work]));
    await browser.kill();
    browser = await startBrowser(profile);
    await browser.page.goto(server.url);
    await expect(browser.page.getByRole('link', { name: /Trial block/ })).toBeVisible({
      timeout: 30_000,
    });
    await expect(browser.page.locator('.notice-wrong')).toHaveCount(0);
    check(before, await everything(browser.page));
  } finally {
    await browser.kill();
    await server.stop();
  }
}

/** The app, stored for offline use, on a shop of format 1. */
async function openWithSample(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await untilReadyForOffline(page);
  await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
  await page.evaluate(
    (all) =>
      new Promise<void>((resolve) => {
        const request = indexedDB.open('highedge', 1);
        request.onsuccess = () => {
          const transaction = request.result.transaction('records', 'readwrite');
          for (const [key, value] of Object.entries(all)) {
            transaction.objectStore('records').put(value, key);
          }
          transaction.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
    SAMPLE,
  );
  await page.goto(url);
  await expect(page.getByRole('link', { name: /Trial block/ })).toBeVisible();
}

interface At {
  readonly folder: string;
  readonly site: string;
}

async function begin(work: Work, page: Page, { folder, site }: At): Promise<void> {
  if (work === 'update') {
    putNewerBuild(site);
    await page.evaluate(async () => {
      await (await navigator.serviceWorker.ready).update();
    });
    await page.getByRole('button', { name: 'Take it now' }).click();
    return;
  }
  if (work === 'upgrade') {
    // Every change of a record writes it in today's format.
    await page.getByRole('link', { name: /Block in inches/ }).click();
    await page.goto(`${page.url()}/drawing`);
    const name = page.getByRole('textbox', { name: 'Name', exact: true });
    await name.press('End');
    void name.pressSequentially(' typed on and on and on').catch(() => undefined);
    return;
  }
  await page.getByRole('link', { name: /Backup and files/ }).click();
  if (work === 'backup') {
    await page.getByRole('button', { name: 'Back everything up' }).click();
    return;
  }
  const file = join(folder, 'many.highedge');
  writeFileSync(file, gzipSync(manyParts()));
  const merge = page.getByRole('region', { name: 'Open a backup' });
  await merge.getByLabel('Choose a file, or drop it here').setInputFiles(file);
  await merge.getByRole('button', { name: 'Merge it' }).click({ timeout: 60_000 });
}

/** The sample's part with its chain over and over, each time under other ids. */
function manyParts(): string {
  const records = Object.values(SAMPLE).flatMap((value) => {
    const upgraded = upgrade(value);
    return upgraded.ok && upgraded.record.kind !== 'shop' ? [upgraded.record] : [];
  });
  const ids = records.flatMap((record) => ('id' in record ? [record.id] : []));
  const text = records.map((record) => JSON.stringify(record)).join(',\n');
  const copies = Array.from({ length: PARTS }, (_, copy) =>
    ids.reduce((all, id) => all.replaceAll(id, `${id}-${copy}`), text),
  );
  const head = headLine({ made: '2024-03-05T14:07:00.000Z', app: '0.1.0' });
  return `${head}${copies.join(',\n')}\n${endLine(PARTS * records.length)}`;
}

async function everything(page: Page): Promise<Stored> {
  return page.evaluate(
    () =>
      new Promise<Stored>((resolve) => {
        const request = indexedDB.open('highedge', 1);
        request.onsuccess = () => {
          const store = request.result.transaction('records').objectStore('records');
          const [keys, values] = [store.getAllKeys(), store.getAll()];
          values.onsuccess = () => {
            request.result.close();
            resolve(Object.fromEntries(keys.result.map((key, i) => [key, values.result[i]])));
          };
        };
      }),
  );
}

/** All of before is there, and all that is there is whole. */
function check(before: Stored, after: Stored): void {
  for (const [key, value] of Object.entries(before)) {
    const isTypedOn = nameOf(after[key])?.startsWith('Block in inches') === true;
    if (!isTypedOn && !isSame(after[key], value)) throw new Error(`${key} is not as it was`);
  }
  const entered = Object.entries(after).filter(([key]) => /^(part|chain|shop)/.test(key));
  for (const [key, value] of entered) {
    const upgraded = upgrade(value);
    if (!upgraded.ok || keyOf(upgraded.record) !== key) throw new Error(`${key} is damaged`);
    const owner = ownerOf(upgraded.record);
    if (owner !== undefined && !(owner in after)) throw new Error(`${key} has lost ${owner}`);
  }
}

function nameOf(value: unknown): string | undefined {
  return (value as { entry?: { name?: string } } | undefined)?.entry?.name;
}

/** The key of what a record is worth nothing without. */
function ownerOf(record: StoredRecord): string | undefined {
  if (record.kind === 'inspection') return `part/${record.part}`;
  return record.kind === 'work' ? `chain/${record.part}/inspection/${record.after}` : undefined;
}
