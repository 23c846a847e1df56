import { useEffect } from 'preact/hooks';
import { gatherPasses } from '../state/learning';
import { loading } from '../state/shop';

/** Has the passes of all parts gathered, once the database has told which parts there are. */
export function useGatheredPasses(): void {
  const isReady = loading.value === 'ready';
  useEffect(() => {
    if (isReady) void gatherPasses();
  }, [isReady]);
}
