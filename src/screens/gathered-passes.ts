import { useEffect } from 'preact/hooks';
import { arithmetic } from '../state/arithmetic/arithmetic';
import { gatherPasses } from '../state/learning';
import { loading } from '../state/shop';

/** Has the passes of all parts gathered, once the database has told which parts there are. */
export function useGatheredPasses(): void {
  const isReady = loading.value === 'ready';
  // Once sums can be worked out, more of the passes can be read.
  const sums = arithmetic.value;
  useEffect(() => {
    if (isReady) void gatherPasses();
  }, [isReady, sums]);
}
