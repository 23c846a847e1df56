/**
 * Keeps `field` above the keypad and under the band while what stands above it grows or shrinks; where
 * somebody has scrolled away from it, it is left alone.
 *
 * @returns what ends it.
 */
export function keepInSight(field: HTMLElement): () => void {
  const contents = field.closest('main') ?? document.body;
  let seen = true;
  const look = () => {
    seen = isInSight(field);
  };
  const grown = new ResizeObserver(() => {
    if (seen && !isInSight(field)) field.scrollIntoView({ block: 'center', behavior: 'instant' });
  });
  field.scrollIntoView({ block: 'center' });
  grown.observe(contents);
  document.addEventListener('scroll', look, { passive: true });
  return () => {
    grown.disconnect();
    document.removeEventListener('scroll', look);
  };
}

function isInSight(field: HTMLElement): boolean {
  const { top, bottom } = field.getBoundingClientRect();
  const band = document.querySelector('.band')?.getBoundingClientRect().bottom ?? 0;
  const pad = document.querySelector('.keypad')?.getBoundingClientRect().top ?? innerHeight;
  return top >= band && bottom <= pad;
}
