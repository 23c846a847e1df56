// @ts-check
/**
 * Kills a browser over and over while somebody types, and tells what was lost: `npm run attack --
 * --kills 300 --seed 7`. With `--while import`, backup, upgrade or update it is killed in the midst of
 * that, each time on a fresh copy of a profile. A failure is told with its seed: `--kills 1 --seed` it
 * to see it again.
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

/** @type {typeof import('./kill-at-work')} */
const { getReady, killAtWork } = await load('./tests/attacks/kill-at-work.ts');
/** @type {typeof import('./works')} */
const { WORKS } = await load('./tests/attacks/works.ts');

const BUILD = 'test-results/attacks';

const { values } = parseArgs({
  options: {
    while: { type: 'string', default: 'typing' },
    kills: { type: 'string', default: '300' },
    seed: { type: 'string', default: String(Date.now() % 1_000_000) },
  },
});

const [count, seed] = [Number(values.kills), Number(values.seed)];
console.log(`${count} kills, seed ${seed}`);
let exitCode = 0;
const folder = mkdtempSync(join(tmpdir(), 'highedge-'));
try {
  const work = WORKS.find((one) => one === values.while);
  if (work === undefined) await whileTyping();
  else await atWork(work);
} finally {
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
}
// The runner of vite keeps the process alive.
exit(exitCode);

/** @param {import('./works').Work} work */
async function atWork(work) {
  const bout = await getReady(work, folder, BUILD);
  console.log(`The ${work} takes ${bout.takes.toFixed(0)} ms`);
  /** @type {number[]} */
  const failed = [];
  try {
    for (let number = 0; number < count; number += 1) {
      try {
        const at = await killAtWork(bout, seed + number);
        console.log(`${number + 1}: killed ${at.toFixed(0)} ms into the ${work}, nothing missing`);
      } catch (error) {
        failed.push(seed + number);
        console.log(`${number + 1}: seed ${seed + number}: ${String(error).slice(0, 2000)}`);
      }
    }
  } finally {
    await bout.server.stop();
  }
  console.log({ work, kills: count, failures: failed.length, seeds: failed.join(' ') });
  if (failed.length > 0) exitCode = 1;
}

async function whileTyping() {
  const server = await startServer(BUILD);
  try {
    const kills = await killWhileTyping(
      server.url,
      join(folder, 'profile'),
      count,
      seed,
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
  }
}
