import { useLocation } from 'preact-iso';
import { to } from './paths';

/** The address of the readings that somebody came to the kit from, kept on the way to what lies behind the kit. */
export function useCameFrom(): string | undefined {
  const { from } = useLocation().query;
  // Only within the app: an address may have come from anywhere.
  return from?.startsWith(`${to.bench()}part/`) === true ? from : undefined;
}
