// @ts-check
/**
 * Lighthouse's scores of what is in `dist`, at its phone settings: a slow network and a processor
 * slowed down four times. It is no package of the project, being larger than all of it together: npx
 * fetches it. Fails where a score is below 100.
 */
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { exit } from 'node:process';
import { findChromium } from './find-chromium.mjs';

const LIGHTHOUSE = 'lighthouse@12.2.3';
const PORT = 4176;
const ADDRESS = `http://127.0.0.1:${PORT}/`;
const REPORT = 'test-results/lighthouse.json';
const CATEGORIES = ['performance', 'accessibility', 'best-practices'];
const FLAGS =
  '--headless=new --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync';

const preview = ['node_modules/vite/bin/vite.js', 'preview', '--host', '127.0.0.1'];
const server = spawn('node', [...preview, '--port', String(PORT), '--strictPort'], {
  stdio: 'ignore',
});
/** @param {number} tries @returns {Promise<void>} */
async function answering(tries) {
  const answer = await fetch(ADDRESS).catch(() => undefined);
  if (answer?.ok) return;
  if (tries === 0) throw new Error(`Nothing answers at ${ADDRESS}`);
  await new Promise((resolve) => setTimeout(resolve, 100));
  return answering(tries - 1);
}

try {
  await answering(300);
  mkdirSync('test-results', { recursive: true });
  spawnSync(
    'npx',
    [
      ...['--yes', '--prefer-offline', LIGHTHOUSE, ADDRESS, '--quiet'],
      ...['--output=json', `--output-path=${REPORT}`, `--only-categories=${CATEGORIES.join()}`],
      `--chrome-flags=${FLAGS}`,
    ],
    { stdio: 'inherit', env: { ...process.env, CHROME_PATH: findChromium() ?? '' } },
  );
} finally {
  server.kill();
}

/** @typedef {{ id: string, title: string, score: number | null, displayValue?: string }} Audit */
/** @type {{ categories: Record<string, { score: number, auditRefs: { id: string, weight: number }[] }>, audits: Record<string, Audit> }} */
const { categories, audits } = JSON.parse(readFileSync(REPORT, 'utf8'));
for (const name of CATEGORIES) {
  const category = categories[name];
  console.log(`${name}: ${Math.round((category?.score ?? 0) * 100)}`);
  for (const { id, weight } of category?.auditRefs ?? []) {
    const audit = audits[id];
    if (weight > 0 && audit && audit.score !== null && audit.score < 1) {
      console.log(`  ${audit.title}: ${audit.score} ${audit.displayValue ?? ''}`);
    }
  }
}
exit(CATEGORIES.every((name) => categories[name]?.score === 1) ? 0 : 1);
