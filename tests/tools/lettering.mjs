// @ts-check
/**
 * Cuts the lettering in src/widgets/styles/lettering from its package to the signs that the app needs:
 * `node tests/tools/lettering.mjs` after a new version of it, or where a sign is missing. Takes Python
 * with fonttools and brotli.
 */
import { execFileSync } from 'node:child_process';

const PACKAGE = 'node_modules/@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin';
const FOLDER = 'src/widgets/styles/lettering';
const WEIGHTS = { medium: 500, bold: 700 };

/** Western letters, signs of units and of arithmetic, dashes and quotes. The package has no ticks or arrows: widgets/drawn-sign.tsx. */
const SIGNS = [
  'U+0020-007E,U+00A0,U+00B0-00B3,U+00B5,U+00B7,U+00C0-00FF',
  'U+2013,U+2018,U+2019,U+201C,U+201D,U+2026,U+2032,U+2033',
  'U+2212',
].join(',');

for (const [name, weight] of Object.entries(WEIGHTS)) {
  execFileSync(
    'python3',
    [
      ...['-m', 'fontTools.subset', `${PACKAGE}-${weight}-normal.woff2`],
      ...[`--unicodes=${SIGNS}`, '--layout-features=kern,tnum'],
      ...['--no-hinting', '--desubroutinize', '--flavor=woff2'],
      `--output-file=${FOLDER}/${name}.woff2`,
    ],
    { stdio: 'inherit' },
  );
}
