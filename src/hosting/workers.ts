import type { Plugin, Rolldown } from 'vite';

/** How a worker is started, as vite and the browsers have it: by the place of its script beside the module. */
const STARTED = /new Worker\(new URL\('([^']+)', import\.meta\.url\)/g;

/** What the first screen shares with the workers: the layers in which nothing needs a page. */
const WITHOUT_PAGE = /\/src\/(core|entry|words|store|exchange)\/.*/;

/** What draws the page. All of it is in the first screen. */
const DRAWS = /\/node_modules\/@?preact\//;

/** What no worker may load: it has no document. */
const OF_THE_PAGE = /\/src\/(widgets|screens|app|main)\b|\/node_modules\/@?preact/;

/**
 * Builds the workers with the app, so that they load the pieces that its screens load too. Vite would build
 * each worker by itself, with copies of all that it reckons with, and everything is stored for offline use.
 */
export function workersWithTheApp(): Plugin {
  const output = { codeSplitting: { groups: [{ name: firstPiece, debugName: 'first piece' }] } };
  return {
    name: 'workers-with-the-app',
    apply: 'build',
    // Before vite's own plugin for workers, which so finds none to build.
    enforce: 'pre',
    config: () => ({ build: { rolldownOptions: { output } } }),
    transform: {
      filter: { id: /\/src\/.*\.ts$/, code: STARTED },
      async handler(code, starter) {
        let built = code;
        for (const [start, script = ''] of code.matchAll(STARTED)) {
          const found = await this.resolve(script, starter);
          if (found === null) throw new Error(`${starter} starts a worker that is not there`);
          const worker = this.emitFile({ type: 'chunk', id: found.id });
          built = built.replace(start, `new Worker(import.meta.ROLLUP_FILE_URL_${worker}`);
        }
        return built;
      },
    },
    generateBundle(_, bundle) {
      for (const file of Object.values(bundle)) check(file, bundle);
    },
  };
}

/**
 * The piece that a module of the first screen goes into. Left to itself, the build cuts the layers
 * wherever a worker needs a little of them, and the first screen would wait for ten small pieces.
 */
function firstPiece(id: string, graph: Rolldown.ChunkingContext): string | null {
  if (DRAWS.test(id)) return 'preact';
  if (!WITHOUT_PAGE.test(id)) return null;
  const main = id.replace(WITHOUT_PAGE, '/src/main.tsx');
  return neededBy(main, graph).has(id) ? 'records' : null;
}

function neededBy(start: string, graph: Rolldown.ChunkingContext): ReadonlySet<string> {
  const needed = new Set([start]);
  for (const id of needed) {
    for (const imported of graph.getModuleInfo(id)?.importedIds ?? []) needed.add(imported);
  }
  return needed;
}

/** @throws Error where a worker would load what needs a page. */
function check(file: Rolldown.OutputBundle[string], bundle: Rolldown.OutputBundle): void {
  if (file.type !== 'chunk' || !/worker\.ts$/.test(file.facadeModuleId ?? '')) return;
  const loaded = new Set([file.fileName]);
  for (const name of loaded) {
    const piece = bundle[name];
    if (piece?.type !== 'chunk') continue;
    const wrong = piece.moduleIds.find((id) => OF_THE_PAGE.test(id));
    if (wrong !== undefined) throw new Error(`The worker ${file.fileName} would load ${wrong}`);
    for (const imported of piece.imports) loaded.add(imported);
  }
}
