// @ts-check
/**
 * Kills a browser over and over while somebody types, and tells what was lost: `npm run attack --
 * --kills 300 --seed 7`.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { exit } from 'node:process';
import { parseArgs } from 'node:util';
import { load } from '../bench/support/measure.mjs';

/** @type {typeof import('../browser/server')} */
const { startServer } = await load('./tests/browser/server.ts');
/** @type {typeof import('./kill-while-typing')} */
const { killWhileTyping } = await load('./tests/attacks/kill-while-typing.ts');

const { values } = parseArgs({
  options: {
    kills: { type: 'string', default: '300' },
    seed: { type: 'string', default: String(Date.now() % 1_000_000) },
  },
});

console.log(`${values.kills} kills, seed ${values.seed}`);
const server = await startServer('test-results/attacks');
const profile = mkdtempSync(join(tmpdir(), 'highedge-'));
try {
  const kills = await killWhileTyping(
    server.url,
    profile,
    Number(values.kills),
    Number(values.seed),
    ({ handled, gap, missing }, number) =>
      console.log(
        `${number}: ${handled} keystrokes, ${gap} ms apart, ${missing.count} missing${missing.count > 0 ? `, the oldest ${missing.age.toFixed(0)} ms old` : ''}`,
      ),
  );
  const lost = kills.map(({ missing }) => missing);
  console.log({
    kills: kills.length,
    keystrokes: kills.reduce((sum, { handled }) => sum + handled, 0),
    'nothing missing': lost.filter(({ count }) => count === 0).length,
    'the last keystroke missing': lost.filter(({ count }) => count === 1).length,
    'more missing': lost.filter(({ count }) => count > 1).length,
    'oldest missing, ms': Math.max(...lost.map(({ age }) => age)),
  });
} finally {
  await server.stop();
  rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
}
// The runner of vite keeps the process alive.
exit(0);
