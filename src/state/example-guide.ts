import { withReading } from '../entry/placings';
import type { MicrometerSetup, NoseComparatorSetup } from '../entry/setup-entry';
import { inUnit, isBlank } from '../entry/typed-length';
import type { InspectionRecord } from '../store/records';
import type { Worked } from './answers';
import { chain } from './chain';
import { changeSetup } from './plate-changes';

/** What is typed while the example is played through, µm. */
export const PLAYED = { first: { right: 41, left: 29 }, again: { right: 36, left: 34 } } as const;

/** What the two sides of the example have shown so far, µm. */
interface Shown {
  readonly right: number | undefined;
  readonly left: number | undefined;
  /** What the comparator shows on a square side, as the answer has it. */
  readonly zero: number | undefined;
}

/** Both sides are read; the zero is undefined where nothing tells whether they are parallel. */
export interface BothRead {
  readonly right: number;
  readonly left: number;
  readonly zero: number | undefined;
}

/** Where somebody is who plays the example through. */
export type GuideStep =
  | { readonly kind: 'first side' }
  | { readonly kind: 'second side'; readonly right: number }
  | ({ readonly kind: 'zero falls out' } & BothRead)
  | { readonly kind: 'read again'; readonly micrometer: boolean }
  | ({ readonly kind: 'end' } & BothRead);

/** The step that the readings have come to. */
export function guideStep(inspection: InspectionRecord, { answer }: Worked): GuideStep {
  const readings = answer?.readings ?? [];
  const shownOn = (face: 'right' | 'left') =>
    readings.flatMap((reading) =>
      reading.kind === 'nose comparator' && reading.face === face ? [reading.value] : [],
    )[0];
  const zero = answer?.comparators.find(({ kind }) => kind === 'zero')?.estimate?.value;
  const shown = { right: shownOn('right'), left: shownOn('left'), zero };
  return followsWork(inspection) ? stepAfterWork(inspection, shown) : firstStep(shown);
}

function firstStep({ right, left, zero }: Shown): GuideStep {
  if (right === undefined) return { kind: 'first side' };
  if (left === undefined) return { kind: 'second side', right };
  return { kind: 'zero falls out', right, left, zero };
}

function stepAfterWork(inspection: InspectionRecord, { right, left, zero }: Shown): GuideStep {
  if (right === undefined || left === undefined) return { kind: 'read again', micrometer: false };
  const micrometers = inspection.setups.filter(
    (setup): setup is MicrometerSetup => setup.kind === 'micrometer',
  );
  const isOpen = micrometers.some(({ places }) =>
    places.some(({ thickness }) => isBlank(thickness)),
  );
  return isOpen ? { kind: 'read again', micrometer: true } : { kind: 'end', right, left, zero };
}

function followsWork({ id, part }: InspectionRecord): boolean {
  const { part: open, links = [] } = chain.value ?? {};
  const before = links.slice(
    0,
    links.findIndex((link) => link.id === id),
  );
  return open === part && before.some(({ kind }) => kind === 'work');
}

/** Types other readings into the example's comparator, µm: as if its dial had been turned and both sides read again. */
export function typeIntoExample(
  inspection: InspectionRecord,
  shown: Readonly<Record<'right' | 'left', number>>,
): void {
  const setup = inspection.setups.find(
    (one): one is NoseComparatorSetup => one.kind === 'nose comparator',
  );
  if (setup === undefined) return;
  changeSetup(inspection, setup, (now) =>
    now.placings.reduce((changed, { id, face, reading }) => {
      if (face !== 'right' && face !== 'left') return changed;
      const typed = inUnit({ text: String(shown[face]), unit: 'µm' }, reading.unit);
      return withReading(changed, id, typed.text);
    }, now),
  );
}
