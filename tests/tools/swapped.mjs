// @ts-check
/**
 * Swaps one face, side or height for another in the sources, one place at a time, and tells which
 * swaps no quick test notices: `npm run mutate:swapped`, or `-- --file src/core/part/faces.ts`.
 * The sources themselves are left as they are: each swap is made as the tests load them.
 */
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { env, execPath, exit } from 'node:process';
import { parseArgs } from 'node:util';

const FILES = [
  'src/core/part/faces.ts',
  'src/core/part/face-errors.ts',
  'src/core/part/block.ts',
  'src/core/readings/equations-of.ts',
  'src/core/zones/requirement-forms.ts',
  'src/core/correction/removal.ts',
  'src/core/correction/press-point.ts',
];

/** What is put for what, as whole words. */
const SWAPS = [
  ['right', 'left'],
  ['top', 'bottom'],
  ['front', 'back'],
  ['face', 'base'],
  ['noseHeight', 'indicatorHeight'],
  ['up', 'across'],
];
const WORDS = new Map(
  SWAPS.flatMap(([one = '', other = '']) => [
    [one, other],
    [other, one],
  ]),
);

/** How many run at once. */
const AT_ONCE = 2;

/** @typedef {{ file: string, from: number, to: number, by: string }} Swap */

/** @param {string} file @returns {Swap[]} */
function swapsIn(file) {
  const text = readFileSync(file, 'utf8');
  const code = text.replace(/\/\*[\s\S]*?\*\/|\/\/.*|^import .*$/gm, (part) =>
    ' '.repeat(part.length),
  );
  return [
    ...code.matchAll(new RegExp(`(?<![\\w.])(${[...WORDS.keys()].join('|')})(?!\\w|:)`, 'g')),
  ].map(({ index, 0: word }) => ({
    file,
    from: index,
    to: index + word.length,
    by: WORDS.get(word) ?? '',
  }));
}

/** @param {Swap} swap @returns {Promise<boolean>} whether a test fails for it. */
async function isNoticed(swap) {
  const vitest = ['node_modules/vitest/vitest.mjs', 'run', '--bail', '1'];
  const child = spawn(execPath, [...vitest, '--config', 'tests/tools/swapped-tests.ts'], {
    stdio: 'ignore',
    env: { ...env, SWAP: JSON.stringify(swap) },
  });
  return new Promise((resolve) => child.once('exit', (code) => resolve(code !== 0)));
}

const { values } = parseArgs({ options: { file: { type: 'string' } } });
const swaps = (values.file === undefined ? FILES : [values.file]).flatMap(swapsIn);
let [noticed, done, next] = [0, 0, 0];
async function work() {
  for (let swap = swaps[next++]; swap !== undefined; swap = swaps[next++]) {
    const { file, from, to, by } = swap;
    const text = readFileSync(file, 'utf8');
    const line = text.slice(0, from).split('\n').length;
    const isSeen = await isNoticed(swap);
    done += 1;
    if (isSeen) noticed += 1;
    else console.log(`${file}:${line}: ${by} for ${text.slice(from, to)} is not noticed`);
    if (done % 10 === 0) console.log(`${noticed} of ${done} noticed, of ${swaps.length}`);
  }
}
await Promise.all(Array.from({ length: AT_ONCE }, work));
console.log(`${noticed} of ${swaps.length} swaps noticed`);
exit(0);
