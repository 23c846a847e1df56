// @ts-check
/**
 * Changes the core a little, a thousand times over, and tells which changes no test notices: signs,
 * comparisons, conditions and counts in what stands nearest to the readings and to the cut.
 */
export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'tests/tools/mutation-tests.ts', related: false },
  mutate: [
    'src/core/{units,part}/*.ts',
    'src/core/readings/{equations-of,equation,doubts,repeats,distributions}.ts',
    'src/core/adjustment/{contributions,checks,scaled-estimate}.ts',
    'src/core/zones/{zone-of-requirement,requirement-forms}.ts',
    'src/core/verdict/{conformity,probability}.ts',
    'src/core/correction/{removal,press-point,effects,outcome}.ts',
  ],
  // Names of unknowns and messages are no numbers.
  mutator: { excludedMutations: ['StringLiteral', 'ObjectLiteral', 'BlockStatement'] },
  coverageAnalysis: 'perTest',
  ignoreStatic: true,
  concurrency: 2,
  timeoutMS: 30_000,
  reporters: ['clear-text', 'json'],
  jsonReporter: { fileName: 'test-results/mutation.json' },
  clearTextReporter: { allowColor: false, reportTests: false },
  tempDirName: 'test-results/mutation',
  ignorePatterns: ['test-results', 'dist', 'coverage'],
};
