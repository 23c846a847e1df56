// @ts-check
/**
 * Attacks the way from what is typed to what is told with readings that no shop would take:
 * `npm run attack:readings -- --count 100000 --seed 1`. A failure tells its seed and what was typed.
 */
import { spawnSync } from 'node:child_process';
import { env, execPath, exit } from 'node:process';
import { parseArgs } from 'node:util';

const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '100000' },
    seed: { type: 'string', default: String(Date.now() % 1_000_000) },
  },
});

console.log(`${values.count} inspections, seed ${values.seed}`);
const { status } = spawnSync(
  execPath,
  [
    'node_modules/vitest/vitest.mjs',
    'run',
    'tests/attacks/readings.test.ts',
    '--disable-console-intercept',
  ],
  {
    stdio: 'inherit',
    env: { ...env, ATTACK_COUNT: values.count, ATTACK_SEED: values.seed },
  },
);
exit(status ?? 1);
