import { type Upgraded, upgrade } from '../upgrades';
import { isWhole } from './records';

/**
 * A stored value as a record of today's format, with all in it that the app goes by, or why it is
 * none: what a fault or a worn disk has torn is told apart before anything is made of it.
 */
export function readStored(stored: unknown): Upgraded {
  const upgraded = upgrade(stored);
  return upgraded.ok && !isWhole(upgraded.record) ? { ok: false, reason: 'damaged' } : upgraded;
}
