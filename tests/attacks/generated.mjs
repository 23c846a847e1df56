// @ts-check
/**
 * Attacks the app with generated input, far more of it than the check does: readings that no shop
 * would take, `npm run attack:readings -- --count 100000 --seed 1`, or files to be imported, `npm run
 * attack:imports` for backups and `attack:tables` for CSV. A failure tells its seed.
 */
import { spawnSync } from 'node:child_process';
import { env, execPath, exit } from 'node:process';
import { parseArgs } from 'node:util';

/** What one process takes, and the seeds of it: what is drawn is never taken down again. */
const AT_ONCE = 10_000;
const SEEDS = 20;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    count: { type: 'string', default: '100000' },
    seed: { type: 'string', default: String(Date.now() % 1_000_000) },
  },
});

const [name = 'readings'] = positionals;

/** @param {number} count @param {number} seed */
function attack(count, seed) {
  console.log(`${count} ${name}, seed ${seed}`);
  const vitest = ['node_modules/vitest/vitest.mjs', 'run', `tests/attacks/${name}.test.ts`];
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
