import { defineConfig } from 'vitest/config';

/** The tests that a mutation run goes by: those of the core that take a second or two. */
export default defineConfig({
  test: {
    environment: 'node',
    include: [
      'tests/core/{part,units,readings,zones}/*.test.ts',
      'tests/core/adjustment/{adjustment,budget,alternatives,checks,scaled-estimate}.test.ts',
      'tests/core/verdict/{conformity,probability}.test.ts',
      'tests/core/correction/{removal,press-point,effects,outcome,expected-verdict}.test.ts',
      'tests/core/inspection/{worked-*,four-sides,reversals,sides,uncertainty,repeats,names}.test.ts',
    ],
    testTimeout: 120_000,
  },
});
