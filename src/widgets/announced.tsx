import { useEffect, useState } from 'preact/hooks';

/** How long a text must stand before it is read out, ms: longer than from one key to the next. */
const QUIET = 1000;

/** Read out by a screen reader once it has settled, so that a number is not told anew with every digit. */
export function Announced({ text }: { readonly text: string }) {
  const [settled, setSettled] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => setSettled(text), QUIET);
    return () => clearTimeout(timer);
  }, [text]);
  return (
    <p class="hidden-label" role="status">
      {settled}
    </p>
  );
}
