import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { expect, type Page } from '@playwright/test';
import { putNewerBuild } from '../browser/newer-build';
import { backupOfManyParts } from './support/sample-shop';

/** What is under way when the browser is killed. */
export const WORKS = ['import', 'backup', 'upgrade', 'update'] as const;
export type Work = (typeof WORKS)[number];

/** A work that is about to begin. */
export interface Begun {
  /** Does it, to its end. */
  run(): Promise<void>;
  /** The name of the part that is typed on, where that is the work, with the letters that were handled. */
  readonly accepted?: string;
}

const NAME = 'Block in inches';
/** What is typed behind it while its record is brought to today's format. */
const TYPED_ON = ' typed on and on';

/** Whether the letters that stand behind the part's name are some that were typed. */
export function isTypedOn(name: string): boolean {
  return name.startsWith(NAME) && `${NAME}${TYPED_ON}`.startsWith(name);
}

/** The files that a work is done with. */
export interface Files {
  /** What is served: another build can be put there. */
  readonly site: string;
  /** The backup to be taken in. */
  readonly backup: string;
}

/** Gets everything ready for the work, from the bench. */
export async function readyFor(work: Work, page: Page, files: Files): Promise<Begun> {
  switch (work) {
    case 'update':
      return { run: () => takeNewerBuild(page, files.site) };
    case 'upgrade':
      return typeOn(page);
    case 'backup':
      return backUp(page);
    case 'import':
      return takeIn(page, files.backup);
  }
}

async function takeNewerBuild(page: Page, site: string): Promise<void> {
  putNewerBuild(site);
  await page.evaluate(async () => {
    await (await navigator.serviceWorker.ready).update();
  });
  await page.getByRole('button', { name: 'Take it now' }).click();
  await expect(page.locator('html')).toHaveAttribute('data-build', 'newer');
}

/** Every change of a record writes it in today's format. */
async function typeOn(page: Page): Promise<Begun> {
  await page.getByRole('link', { name: NAME }).click();
  await expect(page.getByRole('heading', { level: 1, name: NAME })).toBeVisible();
  await page.goto(`${page.url()}/drawing`);
  const name = page.getByRole('textbox', { name: 'Name', exact: true });
  await name.press('End');
  let accepted = NAME;
  const run = async () => {
    for (const letter of TYPED_ON) {
      await page.keyboard.press(letter);
      accepted += letter;
      await pause(20);
    }
  };
  return {
    run,
    get accepted() {
      return accepted;
    },
  };
}

async function backUp(page: Page): Promise<Begun> {
  await toFiles(page);
  const run = async () => {
    await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Back everything up' }).click(),
    ]);
  };
  return { run };
}

/** Lets a backup be looked over, and merges it. */
export async function takeIn(page: Page, backup: string): Promise<Begun> {
  await toFiles(page);
  const sheet = page.getByRole('region', { name: 'Open a backup or a table' });
  await sheet.getByLabel('Choose a file, or drop it here').setInputFiles(backup);
  const merge = sheet.getByRole('button', { name: 'Merge it' });
  await expect(merge).toBeVisible({ timeout: 60_000 });
  const run = async () => {
    await merge.click();
    await expect(sheet.getByText('Merged.')).toBeVisible({ timeout: 60_000 });
  };
  return { run };
}

async function toFiles(page: Page): Promise<void> {
  await page.getByRole('link', { name: /Backup and files/ }).click();
  await expect(page.getByRole('heading', { name: 'Open a backup or a table' })).toBeVisible();
}

/** Writes the backup that `import` takes in. */
export function writeManyParts(folder: string): string {
  const file = join(folder, 'many.highedge');
  writeFileSync(file, backupOfManyParts());
  return file;
}
