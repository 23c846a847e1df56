// @ts-check
/**
 * Attacks the way from what is typed to what is told with readings that no shop would take:
 * `npm run attack:readings -- --count 100000 --seed 1`. A failure tells its seed and what was typed.
 */
import { spawnSync } from 'node:child_process';
import { env, execPath, exit } from 'node:process';
import { parseArgs } from 'node:util';

/** Inspections for one process, and the seeds that they take: what is drawn is never taken down again. */
const AT_ONCE = 10_000;
const SEEDS = 20;

const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '100000' },
    seed: { type: 'string', default: String(Date.now() % 1_000_000) },
  },
});

/** @param {number} count @param {number} seed */
function attack(count, seed) {
  console.log(`${count} inspections, seed ${seed}`);
  const vitest = ['node_modules/vitest/vitest.mjs', 'run', 'tests/attacks/readings.test.ts'];
  const { status } = spawnSync(execPath, [...vitest, '--disable-console-intercept'], {
    stdio: 'inherit',
    env: { ...env, ATTACK_COUNT: String(count), ATTACK_SEED: String(seed) },
  });
  return status === 0;
}

const total = Number(values.count);
const starts = Array.from({ length: Math.ceil(total / AT_ONCE) }, (_, part) => part);
const held = starts.map((part) =>
  attack(Math.min(AT_ONCE, total - part * AT_ONCE), Number(values.seed) + part * SEEDS),
);
exit(held.every(Boolean) ? 0 : 1);
