import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { kill } from 'node:process';
import { setTimeout as pause } from 'node:timers/promises';
import { type Browser, chromium, type Page } from '@playwright/test';
import { findChromium } from '../tools/find-chromium.mjs';

const FLAGS = [
  '--headless=new',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--remote-debugging-port=0',
];

/** A browser with a profile on the disk, which can be killed and started again. */
export interface KillableBrowser {
  /** Its first page. */
  readonly page: Page;
  /** Kills the browser with all its processes, as a flat battery would. */
  kill(): Promise<void>;
  /** Ends the browser as a person does: all that it still holds is written. */
  close(): Promise<void>;
}

/** Starts a browser on `profile`, a folder that is made where it is not there. */
export async function startBrowser(profile: string): Promise<KillableBrowser> {
  const portFile = join(profile, 'DevToolsActivePort');
  rmSync(portFile, { force: true });
  // A group of its own, so that all its processes can be killed at once.
  const child = spawn(
    findChromium() ?? '',
    [...FLAGS, `--user-data-dir=${profile}`, 'about:blank'],
    {
      stdio: 'ignore',
      detached: true,
    },
  );
  try {
    const browser = await chromium.connectOverCDP(await addressIn(portFile, child));
    return {
      page: await firstPage(browser),
      kill: () => killGroup(child),
      close: () => close(browser, child),
    };
  } catch (error) {
    await killGroup(child);
    throw error;
  }
}

async function addressIn(portFile: string, child: ChildProcess): Promise<string> {
  while (child.exitCode === null) {
    const [port] = existsSync(portFile) ? readFileSync(portFile, 'utf8').split('\n') : [];
    if (port) return `http://127.0.0.1:${port}`;
    await pause(20);
  }
  throw new Error(`The browser ended with code ${child.exitCode}`);
}

async function firstPage(browser: Browser): Promise<Page> {
  const [context] = browser.contexts();
  if (context === undefined) throw new Error('The browser has no context');
  return context.pages()[0] ?? context.newPage();
}

async function close(browser: Browser, child: ChildProcess): Promise<void> {
  const gone = once(child, 'exit');
  const session = await browser.newBrowserCDPSession();
  await session.send('Browser.close').catch(() => undefined);
  await gone;
}

async function killGroup(child: ChildProcess): Promise<void> {
  if (child.pid === undefined || child.exitCode !== null || child.signalCode !== null) return;
  const gone = once(child, 'exit');
  kill(-child.pid, 'SIGKILL');
  await gone;
}
