import { readdirSync, readFileSync } from 'node:fs';
import type { Plugin, Rolldown } from 'vite';

/**
 * Packages that leave something of theirs in what is built without being modules of it: the worker,
 * loading, updates; the lettering, which is cut to the signs that the app needs.
 */
const LEFT_BY_TOOLS = [
  '@fontsource/barlow-semi-condensed',
  'vite',
  'vite-plugin-pwa',
  'workbox-core',
  'workbox-precaching',
  'workbox-routing',
];

/** Licences under which something may be handed on with an app under MIT. */
const FREE = ['MIT', 'Apache-2.0', 'BSD-3-Clause', 'ISC', 'OFL-1.1'];

/** What comes after its own licence in vite's file: licences of what stays on the developer's side. */
const OF_ITS_PARTS = '\n# Licenses of bundled dependencies';

interface Package {
  readonly name: string;
  readonly version: string;
  readonly license: string;
  readonly author?: string | { readonly name: string };
}

/**
 * Name, version and licence of the package in `folder`, with the licence's text where it brings it.
 *
 * @throws Error where its licence is none that the app may be handed on with.
 */
function licenceOf(folder: string): string {
  const json = readFileSync(`${folder}/package.json`, 'utf8');
  const { name, version, license, author }: Package = JSON.parse(json);
  if (!FREE.includes(license)) throw new Error(`${name} is built in, under ${license}`);
  const file = readdirSync(folder).find((entry) => /^licen[cs]e(\.|$)/i.test(entry));
  const by = typeof author === 'object' ? author.name : author;
  const text = file ? readFileSync(`${folder}/${file}`, 'utf8') : `By ${by ?? 'its authors'}`;
  const [own = ''] = text.split(OF_ITS_PARTS);
  return `${name} ${version} (${license})\n\n${inParagraphs(own)}\n`;
}

/** Every word of a text, one line a paragraph: the same licence, broken otherwise, is packed again and again. */
function inParagraphs(text: string): string {
  const paragraphs = text.trim().split(/\n\s*\n/);
  return paragraphs.map((paragraph) => paragraph.replace(/\s+/g, ' ').trim()).join('\n\n');
}

const RULE = `\n${'-'.repeat(80)}\n\n`;

/** The licences of the packages in `folders`, the app's own first. */
export function licencesOf(folders: readonly string[]): string {
  const own = `Highedge (MIT)\n\n${inParagraphs(readFileSync('LICENSE', 'utf8'))}\n`;
  return [own, ...folders.map(licenceOf)].join(RULE);
}

/** The folder of each package that something in `file` was made of. */
function packagesIn(file: Rolldown.OutputBundle[string]): readonly string[] {
  const made = file.type === 'chunk' ? Object.keys(file.modules) : file.originalFileNames;
  return made.flatMap((path) => path.match(/node_modules\/(@[^/]+\/)?[^/]+/)?.[0] ?? []);
}

/** Builds `licences.txt`: the licences of all that is built in, and so handed out with the app. */
export function licences(): Plugin {
  return {
    name: 'licences',
    apply: 'build',
    generateBundle(_, bundle) {
      const left = LEFT_BY_TOOLS.map((name) => `node_modules/${name}`);
      const folders = new Set([...Object.values(bundle).flatMap(packagesIn), ...left]);
      this.emitFile({
        type: 'asset',
        fileName: 'licences.txt',
        source: licencesOf([...folders].sort()),
      });
    },
  };
}
