import { readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Puts a newer build of the same app in place of the one in `site`: every script has another name, as
 * after a change, those of before are gone, and the page says that it is the new one.
 */
export function putNewerBuild(site: string): void {
  const assets = join(site, 'assets');
  const scripts = readdirSync(assets).filter((name) => name.endsWith('.js'));
  const renamed = new Map(scripts.map((name) => [name, name.replace(/\.js$/, 'n.js')]));
  for (const [from, to] of renamed) renameSync(join(assets, from), join(assets, to));
  const texts = [
    ...[...renamed.values()].map((name) => join(assets, name)),
    ...['index.html', 'sw.js'].map((name) => join(site, name)),
  ];
  for (const file of texts) {
    let text = readFileSync(file, 'utf8');
    for (const [from, to] of renamed) text = text.replaceAll(from, to);
    writeFileSync(file, text);
  }
  const page = join(site, 'index.html');
  writeFileSync(page, readFileSync(page, 'utf8').replace('<html', '<html data-build="newer"'));
  const worker = join(site, 'sw.js');
  const revised = readFileSync(worker, 'utf8').replace(
    /"[^"]+"(,"url":"index\.html")/,
    '"of the newer build"$1',
  );
  if (!revised.includes('of the newer build'))
    throw new Error('The worker lists its files otherwise');
  writeFileSync(worker, revised);
}
