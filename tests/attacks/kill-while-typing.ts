import { setTimeout as pause } from 'node:timers/promises';
import { expect, type Page } from '@playwright/test';
import { randomFrom } from '../core/support/random';
import { startBrowser } from './killable-browser';
import { type Missing, type Typed, Typist, typedIn } from './typist';

/** ms that a browser lives while it is typed into, at the least and at the most. */
const LIFE = [30, 1500] as const;
/** ms between keystrokes: as fast as the page goes, fast, and as a person types. */
const GAPS = [0, 30, 120];

/** One kill, and what came back after it. */
export interface Kill {
  /** Keystrokes that the page had handled. */
  readonly handled: number;
  /** ms between them, on average. */
  readonly gap: number;
  readonly missing: Missing;
}

/**
 * Kills a browser `kills` times while readings are typed at the plate, and looks after each what came
 * back. Each life begins on the profile that the last one left.
 */
export async function killWhileTyping(
  url: string,
  profile: string,
  kills: number,
  seed: number,
  tell: (kill: Kill, number: number) => void = () => undefined,
): Promise<readonly Kill[]> {
  const random = randomFrom(seed);
  const done: Kill[] = [];
  let browser = await startBrowser(profile);
  try {
    await browser.page.goto(`${url}?example`);
    await browser.page.waitForURL('**/readings/*');
    const address = browser.page.url();
    for (let number = 1; number <= kills; number += 1) {
      const gap = GAPS[number % GAPS.length] ?? 0;
      const typist = new Typist(await whatIsThere(browser.page), 1000 + number * 100);
      const typing = typist.typeUntilGone(browser.page, () => random.between(0, 2 * gap));
      await pause(random.between(...LIFE));
      const [handled, end] = [typist.handled, performance.now()];
      await browser.kill();
      await typing;
      browser = await startBrowser(profile);
      await browser.page.goto(address);
      const missing = typist.missing(await whatIsThere(browser.page), handled, end);
      const kill = { handled, gap, missing };
      done.push(kill);
      tell(kill, number);
    }
    return done;
  } finally {
    await browser.kill();
  }
}

/** What the fields hold once the app has opened, without a word of anything damaged or unsaved. */
async function whatIsThere(page: Page): Promise<Typed> {
  await expect(page.getByRole('textbox', { name: 'Right side', exact: true })).toBeVisible();
  await expect(page.locator('.notice-wrong')).toHaveCount(0);
  return typedIn(page);
}
