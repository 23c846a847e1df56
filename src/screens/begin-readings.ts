import { useLocation } from 'preact-iso';
import { beginInspection } from '../state/inspections';
import type { PartRecord } from '../store/records';
import { to } from './paths';

/** Begins a new inspection of `part` and goes to the plate with it. */
export function useBeginReadings(part: PartRecord): () => void {
  const { route } = useLocation();
  return () => route(to.plate(part.id, beginInspection(part.id, part.entry).id));
}
