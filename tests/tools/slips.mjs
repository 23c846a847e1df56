// @ts-check
/**
 * Slips that a hand makes at the plate or at the keyboard, to be put into the sources one at a time:
 * one face, side or height for another, the next height or place for this one, a height without what
 * it is above, the length of one unit for another.
 */
import { readFileSync } from 'node:fs';
import ts from 'typescript';

/** A piece of a file, from and to in characters, and what is put in its place. */
/** @typedef {{ file: string, from: number, to: number, by: string }} Slip */

/** What is put for what, either way, as whole words. */
const SWAPS = [
  ['right', 'left'],
  ['top', 'bottom'],
  ['front', 'back'],
  ['face', 'base'],
  ['noseHeight', 'indicatorHeight'],
  ['up', 'across'],
  ['edges.up', 'edges.across'],
  ['block.size[u]', 'block.size[v]'],
  ['point.x', 'point.y'],
];

/** Off by one: a pattern, and what is put for all of it. @type {[RegExp, string][]} */
const OFF_BY_ONE = [
  // The next for the first, the last but one for the last.
  [/\[0\]/g, '[1]'],
  [/\[1\]/g, '[0]'],
  [/\.at\(-1\)/g, '.at(-2)'],
  [/(?<=const )\[(\w+)\](?= =)/g, '[, $1]'],
  [/(?<=slice\(0, )(index|-1|index \+ 1)(?=\))/g, '$1 - 1'],
  [/\b(index|indexOf\(placing\)) \+ 1/g, '$1'],
  [/\bcount - 1/g, 'count'],
  [/% 4/g, '% 3'],
  // A height above the plate for one above the nose or above the first, and a millimetre too high.
  [/((?:\w+\.)?indicatorHeight) - (?:\w+\.)?noseHeight/g, '$1'],
  [/reading\.height - height/g, 'reading.height'],
  [/height - mean/g, 'height'],
  [/Math\.max\(\.\.\.heights\) - Math\.min\(\.\.\.heights\)/g, 'Math.max(...heights)'],
  [/(?<=scaled\(\w+, |leanWarmth\(face, base, )(?:height|reach)\b/g, '$& + 1'],
  [/\b(?:nose|indicator|read|up|across) \/ 1000/g, '$& + 1'],
  [/\bpoint\[axis\]/g, '$& + 1'],
  // The next axis, and the length along it.
  [/(?<=axis: )'x'/g, "'y'"],
  [/(?<=axis: )'y'/g, "'z'"],
  [/(?<=axis: )'z'/g, "'x'"],
  // Up to and including for up to.
  [/ < /g, ' <= '],
  [/ <= /g, ' < '],
  [/ > /g, ' >= '],
  // One unit of a slope or a length for another.
  [/\* 100\b/g, '* 25.4'],
  [/\* 25\.4\b/g, '* 100'],
  [/(?<=: )25\.4\b/g, '2.54'],
  [/(?<=: )2\.54\b/g, '25.4'],
  [/(?<=: )25400\b/g, '1000'],
  [/(?<=[*/] )1000\b/g, '100'],
];

/** @param {string} word */
const escaped = (word) => word.replace(/[.[\]]/g, '\\$&');

const WORDS = new Map(
  SWAPS.flatMap(([one = '', other = '']) => [
    [one, other],
    [other, one],
  ]),
);
const WORD = new RegExp(`(?<![\\w.])(${[...WORDS.keys()].map(escaped).join('|')})(?!\\w|:)`, 'g');

/** Every slip that can be made in `file`, and leaves a program. @param {string} file @returns {Slip[]} */
export function slipsIn(file) {
  const text = readFileSync(file, 'utf8');
  const code = text.replace(/\/\*[\s\S]*?\*\/|\/\/.*|^import .*$/gm, (part) =>
    ' '.repeat(part.length),
  );
  const swapped = [...code.matchAll(WORD)].map((match) =>
    slip(file, match, WORDS.get(match[0]) ?? ''),
  );
  const off = OFF_BY_ONE.flatMap(([pattern, by]) =>
    [...code.matchAll(pattern)].map((match) =>
      slip(file, match, by.replaceAll('$1', match[1] ?? '').replaceAll('$&', match[0])),
    ),
  );
  return [...swapped, ...off].filter((one) => isProgram(withSlip(text, one)));
}

/** @param {string} file @param {RegExpExecArray} match @param {string} by @returns {Slip} */
function slip(file, { index, 0: word }, by) {
  return { file, from: index, to: index + word.length, by };
}

/** @param {string} text @param {Slip} slip */
export function withSlip(text, { from, to, by }) {
  return text.slice(0, from) + by + text.slice(to);
}

/** What cannot be read at all would be noticed by any test. @param {string} text */
function isProgram(text) {
  return ts.transpileModule(text, { reportDiagnostics: true }).diagnostics?.length === 0;
}
