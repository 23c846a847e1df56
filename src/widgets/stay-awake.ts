import { useEffect } from 'preact/hooks';

/**
 * Keeps the screen lit while the component is shown, in browsers that can: hands at a plate are not
 * free to tap. The browser lets go of it whenever the page is out of sight, so that it is asked for
 * again when the page is back, and at a tap, as some browsers grant it only then.
 */
export function useStayAwake(): void {
  useEffect(() => {
    if (!('wakeLock' in navigator)) return;
    let lock: WakeLockSentinel | undefined;
    let asking = false;
    let isShown = true;
    const ask = async () => {
      if (document.visibilityState !== 'visible' || asking || lock?.released === false) return;
      asking = true;
      try {
        const held = await navigator.wakeLock.request('screen');
        if (isShown) lock = held;
        else await held.release();
      } catch {
        // Refused, by a low battery for example: the screen dims as it always does.
      }
      asking = false;
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    document.addEventListener('click', ask);
    return () => {
      isShown = false;
      document.removeEventListener('visibilitychange', ask);
      document.removeEventListener('click', ask);
      void lock?.release();
    };
  }, []);
}
