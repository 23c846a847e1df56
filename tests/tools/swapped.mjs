// @ts-check
/**
 * Puts one face, side, height, place or unit for another in the sources, one slip at a time, and tells
 * which slips no quick test notices: `npm run mutate:swapped`, or `-- --file src/core/part/faces.ts`.
 * The sources themselves are left as they are: each slip is made as the tests load them.
 */
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { env, execPath, exit } from 'node:process';
import { parseArgs } from 'node:util';
import { slipsIn } from './slips.mjs';

const FILES = [
  'src/core/part/faces.ts',
  'src/core/part/face-errors.ts',
  'src/core/part/block.ts',
  'src/core/readings/equations-of.ts',
  'src/core/readings/repeats.ts',
  'src/core/zones/requirement-forms.ts',
  'src/core/correction/removal.ts',
  'src/core/correction/press-point.ts',
  'src/core/inspection/sides.ts',
  'src/core/units/length.ts',
  'src/core/units/slope.ts',
  'src/entry/read-column.ts',
  'src/entry/read-micrometer.ts',
  'src/entry/read-nose-comparator.ts',
  'src/entry/read-over-face.ts',
  'src/entry/read-place.ts',
  'src/entry/place-edges.ts',
  'src/entry/placings.ts',
  'src/entry/column-heights.ts',
  'src/entry/grid.ts',
  'src/entry/next-empty.ts',
  'src/entry/reading-rows.ts',
  'src/entry/reading-names.ts',
];

/** How many run at once. */
const AT_ONCE = 2;

/** @param {import('./slips.mjs').Slip} slip @returns {Promise<boolean>} whether a test fails for it. */
async function isNoticed(slip) {
  const vitest = ['node_modules/vitest/vitest.mjs', 'run', '--bail', '1', '--no-isolate'];
  const child = spawn(execPath, [...vitest, '--config', 'tests/tools/swapped-tests.ts'], {
    stdio: 'ignore',
    env: { ...env, SLIP: JSON.stringify(slip) },
  });
  return new Promise((resolve) => child.once('exit', (code) => resolve(code !== 0)));
}

const { values } = parseArgs({ options: { file: { type: 'string', multiple: true } } });
const slips = (values.file ?? FILES).flatMap(slipsIn);
let [noticed, done, next] = [0, 0, 0];
async function work() {
  for (let slip = slips[next++]; slip !== undefined; slip = slips[next++]) {
    const { file, from, to, by } = slip;
    const text = readFileSync(file, 'utf8');
    const line = text.slice(0, from).split('\n').length;
    const isSeen = await isNoticed(slip);
    done += 1;
    if (isSeen) noticed += 1;
    else console.log(`${file}:${line}: ${by} for ${text.slice(from, to)} is not noticed`);
    if (done % 10 === 0) console.log(`${noticed} of ${done} noticed, of ${slips.length}`);
  }
}
await Promise.all(Array.from({ length: AT_ONCE }, work));
console.log(`${noticed} of ${slips.length} slips noticed`);
exit(0);
