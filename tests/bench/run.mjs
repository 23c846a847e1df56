// @ts-check
/**
 * Runs the benchmarks one after the other, each in a process of its own, or those named: `npm run
 * bench keystroke`. They measure and print; no figure makes them fail.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { argv, execPath, exit } from 'node:process';

const ENDING = '.bench.mjs';

const asked = argv.slice(2);
const names = readdirSync(new URL('.', import.meta.url))
  .filter((file) => file.endsWith(ENDING))
  .map((file) => file.slice(0, -ENDING.length))
  .filter((name) => asked.length === 0 || asked.includes(name));
const statuses = names.map((name) => {
  const { status } = spawnSync(execPath, [`tests/bench/${name}${ENDING}`], { stdio: 'inherit' });
  return status;
});
exit(names.length > 0 && statuses.every((status) => status === 0) ? 0 : 1);
