// @ts-check
/** The one-way flow of imports, as rules for dependency-cruiser. */

/** What each folder of src may import besides itself. */
const LAYERS = {
  // For whoever serves the app: no part of it.
  hosting: [],
  core: [],
  entry: ['core'],
  words: ['core', 'entry'],
  store: ['core', 'entry'],
  'service-worker': ['store'],
  exchange: ['core', 'entry', 'words', 'store'],
  state: ['core', 'entry', 'words', 'store', 'exchange'],
  widgets: ['core', 'entry', 'words'],
  screens: ['core', 'entry', 'words', 'store', 'exchange', 'state', 'widgets', 'updates'],
};

/** The folders of src/core: a later one may import earlier ones, never the reverse. */
const CORE_FLOW = [
  'units',
  'statistics',
  'linear-program',
  'part',
  'readings',
  'adjustment',
  'zones',
  'verdict',
  'correction',
  'inspection',
];

const layerRules = Object.entries(LAYERS).map(([layer, below]) => ({
  name: `${layer}-looks-only-down`,
  severity: 'error',
  from: { path: `^src/${layer}/` },
  to: { path: '^src/', pathNot: `^src/(${[layer, ...below].join('|')})(/|\\.ts$)` },
}));

const coreRules = CORE_FLOW.slice(0, -1).map((folder, index) => ({
  name: `core-${folder}-looks-only-back`,
  severity: 'error',
  from: { path: `^src/core/${folder}/` },
  to: { path: `^src/core/(${CORE_FLOW.slice(index + 1).join('|')})/` },
}));

export default {
  forbidden: [
    ...layerRules,
    ...coreRules,
    {
      name: 'core-entry-words-need-no-package',
      severity: 'error',
      from: { path: '^src/(core|entry|words)/' },
      to: { pathNot: '^src/' },
    },
    {
      name: 'app-needs-no-test',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: '^tests/' },
    },
    {
      name: 'app-needs-no-development-package',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/hosting/' },
      to: { dependencyTypes: ['npm-dev'] },
    },
    { name: 'no-circle', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'no-orphan',
      severity: 'error',
      from: { orphan: true, path: '^src/', pathNot: '^src/(main\\.tsx|environment\\.d\\.ts)$' },
      to: {},
    },
    {
      name: 'every-import-exists',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^virtual:' },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'types'] },
  },
};
