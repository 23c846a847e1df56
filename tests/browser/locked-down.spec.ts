import { createServer } from 'node:http';
import { expect, type Page, test } from '@playwright/test';
import { SECURITY_HEADERS } from '../../src/hosting/headers';
import { untilReadyForOffline } from './offline';
import { describePart, readBothSides, sides, takeAsParallel, type } from './shop-floor';

const POLICY = SECURITY_HEADERS['Content-Security-Policy'];

/** What a mind with bad intent would call a part. */
const NASTY = `"><img src=x onerror="window.hit=1"><script>window.hit=1</script>\${window.hit=1}`;

/** All that the page says was against its policy, and all errors that it told of. */
function complaintsOf(page: Page): string[] {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  return complaints;
}

/** From a new part to the story of its work, then the other screens. */
async function wholeSession(page: Page, name: string): Promise<void> {
  await describePart(page, { name, size: ['60', '40', '90'], within: '0.001' });
  await page.getByRole('button', { name: 'Take readings' }).tap();
  await readBothSides(page, { nose: '6', indicator: '80', right: '34', left: '31' });
  await takeAsParallel(page, '0.1');
  await expect(sides(page)).toContainText('1.82 ±');
  await page.getByText('Faces that cannot do it alone').tap();
  await page.getByRole('button', { name: 'I work the bottom' }).first().tap();
  await page.getByRole('combobox', { name: 'Abrasive, wheel or tool' }).fill(name);
  await type(page, 'How much', '4');
  await page.getByRole('button', { name: 'Measure again' }).tap();
  await type(page, 'Right side', '33');
  await type(page, 'Left side', '32');
  await page.getByRole('link', { name: 'Back to the part' }).tap();
  await expect(page.getByRole('region', { name: 'Its story' })).toContainText(name);
  await page.goto('/');
  await expect(page.getByRole('listitem').getByRole('link', { name })).toBeVisible();
  await page.goto('/kit');
  await page.goto('/rates');
}

test('the host and the page itself both send the policy', async ({ page }) => {
  for (const address of ['/', '/kit', '/sw.js']) {
    const answer = await page.request.get(address);
    for (const [name, value] of Object.entries(SECURITY_HEADERS)) {
      expect(answer.headers()[name.toLowerCase()]).toBe(value);
    }
  }
  await page.goto('/');
  const meta = page.locator('meta[http-equiv="Content-Security-Policy"]');
  expect(POLICY).toContain((await meta.getAttribute('content')) ?? 'no policy');
});

test('no text becomes a script, and no address elsewhere is asked', async ({ page }) => {
  await page.goto('/');
  await expect(page.getByRole('button', { name: 'New part' })).toBeVisible();
  const refused = await page.evaluate(async () => {
    const said = async (attempt: () => unknown) => {
      try {
        await attempt();
        return 'done';
      } catch (error) {
        return (error as Error).name;
      }
    };
    const inline = document.createElement('script');
    return {
      html: await said(() => {
        document.body.innerHTML = '<b>bold</b>';
      }),
      script: await said(() => {
        inline.text = 'window.hit = 1';
      }),
      evaluated: await said(() => setTimeout('window.hit = 1')),
      worker: await said(() => new Worker('https://elsewhere.example/worker.js')),
      request: await said(() => fetch('https://elsewhere.example/')),
    };
  });
  expect(refused).toEqual({
    html: 'TypeError',
    script: 'TypeError',
    evaluated: 'TypeError',
    worker: 'TypeError',
    request: 'TypeError',
  });
  expect(await page.evaluate('window.hit')).toBeUndefined();
});

test('a whole session asks nothing of anyone but its own origin', async ({
  playwright,
}, testInfo) => {
  const { baseURL, launchOptions } = testInfo.project.use;
  const { origin, host } = new URL(baseURL ?? '');
  // All that the browser asks of others than this machine goes through here, its workers' too.
  const asked: string[] = [];
  const others = createServer((request, response) => {
    asked.push(request.url ?? '');
    response.end('elsewhere');
  });
  others.on('connect', (request, socket) => {
    asked.push(request.url ?? '');
    socket.destroy();
  });
  await new Promise<void>((resolve) => others.listen(0, '127.0.0.1', resolve));
  const place = others.address();
  if (place === null || typeof place === 'string') throw new Error('No port is free.');
  const browser = await playwright.chromium.launch({
    ...launchOptions,
    // Chromium itself would ask its maker what the fields of a form are for.
    args: [...(launchOptions?.args ?? []), '--disable-features=AutofillServerCommunication'],
  });
  const context = await browser.newContext({
    baseURL: origin,
    proxy: { server: `http://127.0.0.1:${place.port}`, bypass: host },
    viewport: { width: 412, height: 915 },
    hasTouch: true,
    isMobile: true,
  });
  try {
    const page = await context.newPage();
    const complaints = complaintsOf(page);
    const requests: string[] = [];
    context.on('request', (request) => requests.push(request.url()));
    await page.goto('/');
    await untilReadyForOffline(page);
    await wholeSession(page, 'Trial block');
    expect(complaints).toEqual([]);
    expect(requests.length).toBeGreaterThan(10);
    expect(requests.filter((url) => new URL(url).origin !== origin)).toEqual([]);
    expect(asked).toEqual([]);
    // The ear is not deaf: an address elsewhere would have been heard.
    await page.goto('http://elsewhere.example/');
    expect(asked).toContain('http://elsewhere.example/');
  } finally {
    await browser.close();
    others.close();
  }
});

test('a name that is a script is a name', async ({ page }) => {
  const complaints = complaintsOf(page);
  await wholeSession(page, NASTY);
  expect(await page.evaluate('window.hit')).toBeUndefined();
  await expect(page.locator('img[src="x"]')).toHaveCount(0);
  expect(complaints).toEqual([]);
});

test('the licences of all that is built in can be read', async ({ page }) => {
  await page.goto('/kit');
  const opened = page.waitForEvent('popup');
  await page.getByRole('link', { name: 'Licences of what it is made of' }).tap();
  const text = (await (await opened).locator('body').textContent()) ?? '';
  // The scripts, what is loaded late, the lettering and the worker for offline use.
  for (const name of ['preact', 'mathjs', '@fontsource/barlow-semi-condensed', 'workbox-core']) {
    expect(text).toMatch(new RegExp(`^${name} [\\d.]+ \\(`, 'm'));
  }
});
