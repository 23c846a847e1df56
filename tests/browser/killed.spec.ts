import { expect, test } from '@playwright/test';
import { killWhileTyping } from '../attacks/kill-while-typing';

/** The long run is `npm run attack`. */
const KILLS = 10;

test('a browser that is killed while somebody types has kept what it was given', async ({
  baseURL,
}, testInfo) => {
  test.setTimeout(600_000);
  const profile = testInfo.outputPath('profile');
  const kills = await killWhileTyping(baseURL ?? '', profile, KILLS, 1);
  expect(kills.map(({ missing }) => missing.count).filter((count) => count > 1)).toEqual([]);
});
