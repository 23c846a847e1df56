import { useEffect, useState } from 'preact/hooks';

/** True where the page is at least `rem` wide, in rem of the browser's own text size. */
export function useWide(rem: number): boolean {
  const query = `(min-width: ${rem}rem)`;
  const [wide, setWide] = useState(() => matchMedia(query).matches);
  useEffect(() => {
    const list = matchMedia(query);
    const look = () => setWide(list.matches);
    look();
    list.addEventListener('change', look);
    return () => list.removeEventListener('change', look);
  }, [query]);
  return wide;
}
