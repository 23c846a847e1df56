import { type Adjustment, adjust, type Estimate } from '../../../src/core/adjustment/adjustment';
import { outOfSquare, taper } from '../../../src/core/part/face-errors';
import { FACES, pairsAround } from '../../../src/core/part/faces';
import { type LinearForm, unknown } from '../../../src/core/part/linear-form';
import type { Part } from '../../../src/core/part/part';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT, type Kit } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { leanOf, zeroOfSetting } from '../../../src/core/readings/unknowns';
import { probabilityOfConformity } from '../../../src/core/verdict/probability';
import type { Zone } from '../../../src/core/zones/zone';
import { zoneOfRequirement } from '../../../src/core/zones/zone-of-requirement';
import { type Allowance, expectClose } from './close';

/** A number that readings may leave open, by what it is of. */
export type Said = ReadonlyMap<string, number | undefined>;

/** All the shape of a block that can be asked for: out-of-square at every edge and all tapers. */
const SHAPE: ReadonlyMap<string, LinearForm> = new Map([
  ...FACES.flatMap((base) =>
    pairsAround(base)
      .flat()
      .map((face) => [`${face} on ${base}`, outOfSquare(face, base)] as const),
  ),
  ...FACES.flatMap((face) =>
    pairsAround(face)
      .flat()
      .map((way) => [`taper of ${face} going ${way}`, taper(face, way)] as const),
  ),
]);

/** What the readings say of the shape and of the requirements, with standard uncertainties. */
export function saidOfPart(part: Part, readings: readonly Reading[], kit: Kit = DEFAULT_KIT): Said {
  const adjustment = adjust(equationsOf(readings, part.block, kit));
  return new Map([
    ...[...SHAPE].flatMap(([name, form]) => told(name, adjustment.estimate(form))),
    ...part.requirements.flatMap((one) => {
      const zone = zoneOfRequirement(one, part.block, adjustment);
      const probability = zone && probabilityOfConformity(zone, one.tolerance);
      return [
        [`zone of ${one.id}`, zone?.width] as const,
        [`zone of ${one.id}, standard`, zone && standardOf(zone)] as const,
        [`probability of ${one.id}`, probability] as const,
      ];
    }),
  ]);
}

/** Standard uncertainty at the signs of the parts; none where a part is 0 and so has no sign. */
function standardOf(zone: Zone): number | undefined {
  return zone.parts.every(({ value }) => Math.abs(value) > 1e-6) ? zone.standard : undefined;
}

/** What the readings say of the comparators: every zero and every lean. */
export function saidOfComparators(adjustment: Adjustment, readings: readonly Reading[]): Said {
  const names = readings.flatMap((reading) => {
    if (reading.kind === 'nose comparator') return [zeroOfSetting(reading.setting)];
    return reading.kind === 'column' ? [leanOf(reading.column)] : [];
  });
  return new Map(names.flatMap((name) => told(name, adjustment.estimate(unknown(name)))));
}

function told(name: string, estimate: Estimate | undefined) {
  return [
    [name, estimate?.value],
    [`${name}, standard`, estimate?.standard],
  ] as const;
}

/** Fails where the two do not say the same of the same. */
export function expectSameSaid(
  actual: Said,
  expected: Said,
  allowance: Allowance = { absolute: 1e-8, relative: 1e-8 },
): void {
  if (actual.size !== expected.size) throw new Error('They do not speak of the same');
  for (const [name, value] of expected) {
    const other = actual.get(name);
    if (value !== undefined) expectClose(other, value, allowance);
    else if (other !== undefined) throw new Error(`${name}: ${other} where it should be open`);
  }
}
