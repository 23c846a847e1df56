// @ts-check
/** What the built app may weigh, as limits for size-limit. Paths start from this folder. */
import { readFileSync } from 'node:fs';

const DIST = '../../dist';

/** The entry and what it imports at once: the page names both. */
const page = readFileSync(new URL(`${DIST}/index.html`, import.meta.url), 'utf8');
const scripts = [...page.matchAll(/(?:src|href)="[^"]*?(assets\/[^"]+\.js)"/g)];

export default [
  {
    name: 'Scripts of the first screen',
    path: scripts.map(([, file]) => `${DIST}/${file}`),
    gzip: true,
    limit: '60 kB',
  },
  {
    name: 'All that is stored for offline use',
    path: `${DIST}/**/*`,
    gzip: true,
    limit: '350 kB',
  },
];
