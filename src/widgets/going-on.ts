/** Where a form goes on: its fields, what is chosen of several, and the button that leads on from them. */
const STOPS =
  'input:not([type="radio"]:not(:checked)), select, textarea, .button-main, [data-leads-on]';

/** Goes on after `field` to the next of the `wanted` on the screen: a field, or what leads on from there; stays where there is none. */
export function goOnAfter(field: HTMLElement, wanted = STOPS): void {
  const stops = [...document.querySelectorAll<HTMLElement>(`main :is(${wanted})`)];
  const next = stops.find((stop) => follows(stop, field) && isUsable(stop));
  next?.focus();
  if (next instanceof HTMLInputElement) next.select();
}

function follows(stop: HTMLElement, field: HTMLElement): boolean {
  return (field.compareDocumentPosition(stop) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
}

function isUsable(stop: HTMLElement): boolean {
  return stop.offsetParent !== null && !stop.matches(':disabled');
}
