import { useEffect, useState } from 'preact/hooks';

/**
 * `value` as it was, until the frame with what is drawn at once is on the screen: what can wait
 * follows in a turn of its own. Given the outcome of another `useLater` it follows one turn after.
 */
export function useLater<T>(value: T): T {
  const [shown, show] = useState(value);
  // Effects run once the frame is painted.
  useEffect(() => show(() => value), [value]);
  return shown;
}
