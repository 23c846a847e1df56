import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import packageJson from './package.json' with { type: 'json' };
import { lightCharts } from './src/hosting/charts.ts';
import { pagePolicy, SECURITY_HEADERS } from './src/hosting/headers.ts';
import { licences } from './src/hosting/licences.ts';
import { lightTables } from './src/hosting/tables.ts';
import { workersWithTheApp } from './src/hosting/workers.ts';
import { SHARE } from './src/store/shared-file.ts';

/** The folder of the site that the app is served from, with a slash at both ends. */
const base = process.env.HIGHEDGE_BASE ?? '/';

/** What a backup or a table may be taken for by the app that shares it. */
const SHARED_TYPES = [
  ...['.highedge', '.csv', '.txt', 'text/csv', 'text/plain', 'text/tab-separated-values'],
  ...['application/gzip', 'application/x-gzip', 'application/octet-stream'],
];

export default defineConfig({
  base,
  define: { __APP_VERSION__: JSON.stringify(packageJson.version) },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  build: {
    // The scripts of a screen come by its own imports: a link for each of twenty pieces, all put into the
    // page at the tap that asks for the screen, kept it waiting. src/screens/load-screens.ts loads them ahead instead.
    modulePreload: {
      resolveDependencies: (_, pieces, { hostType }) => (hostType === 'js' ? [] : pieces),
    },
  },
  preview: { headers: SECURITY_HEADERS },
  plugins: [
    pagePolicy(),
    licences(),
    lightCharts(),
    lightTables(),
    workersWithTheApp(),
    VitePWA({
      // The user says when a new version takes over; src/updates.ts registers the worker.
      registerType: 'prompt',
      injectRegister: null,
      // The patterns below take them already, and the manifest is always stored.
      includeManifestIcons: false,
      strategies: 'injectManifest',
      srcDir: 'src/service-worker',
      filename: 'sw.ts',
      injectManifest: {
        // All that is built. A file above the size limit fails the build: it would be missing offline.
        globPatterns: ['**/*'],
        globIgnores: ['robots.txt', 'manifest.webmanifest'],
        // The policy on scripts holds in the worker too: it loads no other.
        rollupFormat: 'iife',
      },
      manifest: {
        id: base,
        start_url: base,
        name: 'Highedge',
        short_name: 'Highedge',
        description:
          'Squareness at the surface plate: what the readings mean and what to take off.',
        lang: 'en',
        display: 'standalone',
        // Backups and tables open with the app where the system asks it: src/state/arrived-file.ts takes them.
        file_handlers: [
          {
            action: `${base}files`,
            accept: { 'application/x-highedge': ['.highedge'], 'text/csv': ['.csv'] },
          },
        ],
        // And other apps share them with it: src/service-worker takes them.
        share_target: {
          action: `${base}${SHARE.path}`,
          method: 'POST',
          enctype: 'multipart/form-data',
          params: {
            title: SHARE.title,
            text: SHARE.text,
            files: [{ name: SHARE.files, accept: SHARED_TYPES }],
          },
        },
        theme_color: '#14213d',
        background_color: '#f4f1ea',
        icons: [
          { src: 'mark.svg', sizes: 'any', type: 'image/svg+xml' },
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
          {
            src: 'icon-maskable-512.png',
            sizes: '512x512',
            type: 'image/png',
            purpose: 'maskable',
          },
        ],
      },
    }),
  ],
  test: {
    environment: 'node',
    include: [
      'tests/{attacks,core,hosting,entry,words,store,exchange,state,tools,widgets}/**/*.test.ts',
    ],
    // A busy machine is slow, not wrong: this is only to end what hangs.
    testTimeout: 120_000,
  },
});
