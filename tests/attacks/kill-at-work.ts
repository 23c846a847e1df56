import { cpSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { expect, type Page } from '@playwright/test';
import { allStored, putStored, type Stored } from '../browser/database';
import { untilReadyForOffline } from '../browser/offline';
import { type Server, startServer } from '../browser/server';
import { randomFrom } from '../core/support/random';
import { type KillableBrowser, startBrowser } from './killable-browser';
import { SAMPLE } from './support/sample-shop';
import { expectKept, expectOwned, expectSame, expectWhole } from './whole';
import { type Files, isTypedOn, readyFor, takeIn, type Work, writeManyParts } from './works';

/** A work, with all that is the same each time that it is cut short. */
export interface Bout extends Files {
  readonly work: Work;
  readonly server: Server;
  /** A profile that has the app and the sample stored, to be copied, and the copy. */
  readonly pattern: string;
  readonly profile: string;
  readonly build: string;
  /** What is stored before the work, and once it is done. */
  readonly before: Stored;
  readonly after: Stored;
  /** ms that the work takes where nobody cuts it short. */
  readonly takes: number;
}

/** Serves a copy of the build, stores app and sample in a profile, and does the work once to its end. */
export async function getReady(work: Work, folder: string, build: string): Promise<Bout> {
  mkdirSync(folder, { recursive: true });
  const [site, pattern, profile] = ['site', 'pattern', 'profile'].map((name) => join(folder, name));
  if (!site || !pattern || !profile) throw new Error('A folder lacks a name');
  cpSync(build, site, { recursive: true });
  const server = await startServer(site);
  const files = { site, backup: writeManyParts(folder) };
  const base = { ...files, work, server, pattern, profile, build };
  const first = await startBrowser(pattern);
  await openWithSample(first.page, server.url);
  // A backup of a small shop would be over before anything could cut it short.
  if (work === 'backup') {
    await (await takeIn(first.page, files.backup)).run();
    await first.page.goto(server.url);
  }
  const before = await allStored(first.page);
  await first.close();
  const { after, takes } = await undisturbed(base);
  return { ...base, before, after, takes };
}

type Base = Omit<Bout, 'before' | 'after' | 'takes'>;

async function undisturbed(base: Base): Promise<Pick<Bout, 'after' | 'takes'>> {
  const browser = await startAnew(base);
  try {
    const begun = await readyFor(base.work, browser.page, base);
    const start = performance.now();
    await begun.run();
    const takes = performance.now() - start;
    await pause(500);
    return { after: await allStored(browser.page), takes };
  } finally {
    await browser.kill();
  }
}

/** A browser on a fresh copy of the profile, with the build in place that the profile has stored. */
async function startAnew({ pattern, profile, build, site, server }: Base) {
  for (const [from, to] of [
    [pattern, profile],
    [build, site],
  ] as const) {
    rmSync(to, { recursive: true, force: true, maxRetries: 5 });
    cpSync(from, to, { recursive: true });
  }
  const browser = await startBrowser(profile);
  await browser.page.goto(server.url);
  await expectOpen(browser.page);
  return browser;
}

/**
 * Kills a browser in the midst of the work, starts it again without a network, and throws where
 * anything that had been there before is not there now, anything is there only in part, or the app
 * does not open. An import that was cut short is done again, and is to end where it would have ended.
 */
export async function killAtWork(bout: Bout, seed: number): Promise<number> {
  const { work, takes, before, after, profile, site, server } = bout;
  let browser = await startAnew(bout);
  const unreachable = `${site} taken away`;
  try {
    const begun = await readyFor(work, browser.page, bout);
    const at = randomFrom(seed).between(0, 1.1 * takes);
    const ended = begun.run().catch(() => undefined);
    await pause(at);
    const { accepted } = begun;
    await browser.kill();
    await ended;
    renameSync(site, unreachable);
    browser = await startBrowser(profile);
    await browser.page.goto(server.url);
    await expectOpen(browser.page);
    const found = await allStored(browser.page);
    await expectAllThere(found, browser.page);
    expectKept(before, found, accepted === undefined ? after : typedOn(found, accepted));
    if (work === 'import') await doAgain(browser, bout);
    else await browser.page.getByRole('link', { name: /Backup and files/ }).click();
    await expect(
      browser.page.getByRole('heading', { name: 'Open a backup or a table' }),
    ).toBeVisible();
    return at;
  } finally {
    await browser.kill();
    rmSync(unreachable, { recursive: true, force: true });
  }
}

async function doAgain({ page }: KillableBrowser, { backup, after }: Bout): Promise<void> {
  await (await takeIn(page, backup)).run();
  expectSame(await allStored(page), after);
}

/** The part whose name was typed on, where it has as many letters as were accepted. */
function typedOn(found: Stored, accepted: string): Stored {
  return Object.fromEntries(
    Object.entries(found).filter(([, value]) => {
      const name = (value as { entry?: { name?: string } }).entry?.name ?? '';
      return isTypedOn(name) && name.length >= accepted.length;
    }),
  );
}

/** Every record is whole, and nothing lacks what it belongs to; where an import was cut short, the bench says so. */
async function expectAllThere(found: Stored, page: Page): Promise<void> {
  expectWhole(found);
  const told = page.getByText('a merge is not finished');
  if ('merging' in found) await expect(told).toBeVisible();
  else {
    await expect(told).toHaveCount(0);
    expectOwned(found);
  }
}

/** The app, stored for offline use, on a shop of format 1. */
async function openWithSample(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await untilReadyForOffline(page);
  await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
  await putStored(page, SAMPLE);
  await page.goto(url);
  await expectOpen(page);
}

/** The bench with the sample's parts on it, and no word of anything damaged or unsaved. */
async function expectOpen(page: Page): Promise<void> {
  const part = page.getByRole('link', { name: /Trial block|Block in inches/ }).first();
  await expect(part).toBeVisible({ timeout: 30_000 });
  await expect(page.locator('.notice-wrong')).toHaveCount(0);
}
