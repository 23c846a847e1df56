import type { SimulatedZone } from '../../core/verdict/monte-carlo';
import { type FixedFinding, zoneQuestion } from './questions';
import { Reckoner } from './reckoner';

/*
 * Zones with form of what nobody looks at: for the list of all parts and for tables. They are worked
 * out in a worker of their own, one after the other, so that nothing on the screen waits for them.
 */

interface Waiting {
  resolve(zone: SimulatedZone): void;
  reject(error: unknown): void;
}

let waiting: Waiting | undefined;
let last: Promise<unknown> = Promise.resolve();

const reckoner = new Reckoner(
  (answer) => {
    if (answer.kind === 'zone') waiting?.resolve(answer.zone);
  },
  (error) => waiting?.reject(error),
);

/** The zone of `finding` with its form. */
export function zoneApart(finding: FixedFinding): Promise<SimulatedZone> {
  const next = last.then(() => {
    return new Promise<SimulatedZone>((resolve, reject) => {
      waiting = { resolve, reject };
      reckoner.start(zoneQuestion(finding));
    });
  });
  last = next.catch(() => undefined);
  return next;
}
