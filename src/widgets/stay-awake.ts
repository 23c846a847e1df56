import { useEffect } from 'preact/hooks';

/** Keeps the screen lit while the component is shown, in browsers that can: hands at a plate are not free to tap. */
export function useStayAwake(): void {
  useEffect(() => {
    if (!('wakeLock' in navigator)) return;
    let lock: WakeLockSentinel | undefined;
    let isShown = true;
    const ask = async () => {
      if (document.visibilityState !== 'visible') return;
      try {
        const held = await navigator.wakeLock.request('screen');
        if (isShown) lock = held;
        else await held.release();
      } catch {
        // Refused, by a low battery for example: the screen dims as it always does.
      }
    };
    void ask();
    // The browser lets go of it whenever the page is out of sight.
    document.addEventListener('visibilitychange', ask);
    return () => {
      isShown = false;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, []);
}
