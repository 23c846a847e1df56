import { readdirSync, readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

/** Development packages that leave code of theirs in what is built: the worker, loading, updates. */
const LEFT_BY_TOOLS = [
  'vite',
  'vite-plugin-pwa',
  'workbox-core',
  'workbox-precaching',
  'workbox-routing',
  'workbox-window',
];

/** What comes after its own licence in vite's file: licences of what stays on the developer's side. */
const OF_ITS_PARTS = '\n# Licenses of bundled dependencies';

interface Locked {
  readonly dev?: boolean;
  /** Only there because another package may be used with it. */
  readonly peer?: boolean;
}

/** The folder of every package whose code is handed out with the app. */
function handedOut(): string[] {
  const lock = JSON.parse(readFileSync('package-lock.json', 'utf8'));
  const locked = Object.entries<Locked>(lock.packages);
  const own = locked.filter(([folder, { dev, peer }]) => folder !== '' && !dev && !peer);
  const tools = LEFT_BY_TOOLS.map((name) => `node_modules/${name}`);
  return [...own.map(([folder]) => folder), ...tools].sort();
}

/** Name, version and licence of a package, with the licence's text. */
function licenceOf(folder: string): string {
  const { name, version, license } = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e(\.|$)/i.test(entry));
  if (file === undefined) throw new Error(`${name} has no licence to hand out.`);
  const [text = ''] = readFileSync(`${folder}/${file}`, 'utf8').split(OF_ITS_PARTS);
  return `${name} ${version} (${license})\n\n${text.trim()}\n`;
}

const RULE = `\n${'-'.repeat(80)}\n\n`;

/** The licences of all that is handed out with the app, the app's own first. */
export function allLicences(): string {
  return [
    `Highedge (MIT)\n\n${readFileSync('LICENSE', 'utf8')}`,
    ...handedOut().map(licenceOf),
  ].join(RULE);
}

/** Builds `licences.txt`, and fails where a package is built in that it does not name. */
export function licences(): Plugin {
  return {
    name: 'licences',
    apply: 'build',
    generateBundle(_, bundle) {
      const folders = handedOut();
      const modules = Object.values(bundle).flatMap((file) =>
        file.type === 'chunk' ? Object.keys(file.modules) : [],
      );
      for (const module of modules) {
        const inPackage = module.match(/node_modules\/(@[^/]+\/)?[^/]+/)?.[0];
        if (inPackage !== undefined && !folders.includes(inPackage)) {
          this.error(`${inPackage} is built in, and its licence is not handed out.`);
        }
      }
      this.emitFile({ type: 'asset', fileName: 'licences.txt', source: allLicences() });
    },
  };
}
