import { afterAll, beforeAll } from 'vitest';
import { provideArithmetic } from '../../../src/entry/arithmetic';
import { evaluate } from '../../../src/state/arithmetic/evaluate';

/** Sums are worked out in the tests of this file, as once their package is loaded. */
export function withSums(): void {
  beforeAll(() => provideArithmetic(() => evaluate));
  afterAll(() => provideArithmetic(() => 'missing'));
}
