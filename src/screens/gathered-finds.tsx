import { useEffect } from 'preact/hooks';
import { gatherFound } from '../state/found';
import { loading } from '../state/shop';

/** Has it gathered what the inspections of all parts have found, once the database has told which parts there are. */
export function useGatheredFinds(): void {
  const isReady = loading.value === 'ready';
  useEffect(() => {
    if (!isReady) return;
    let isSeen = true;
    void gatherFound(() => isSeen);
    return () => {
      isSeen = false;
    };
  }, [isReady]);
}

/** Said until all of it is gathered. */
export function Gathering() {
  return <p class="note">Looking through all parts…</p>;
}
