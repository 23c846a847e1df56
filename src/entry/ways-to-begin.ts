import { areOpposite } from '../core/part/faces';
import type { KitEntry } from './kit-entry';
import { facesToMap, isUprightPair, type PairToRead, pairsToRead } from './pairs-to-read';
import type { PartEntry } from './part-entry';
import type { SetupKind } from './setup-entry';

/** A way to read a pair of faces. */
export interface WayToBegin {
  readonly kind: SetupKind;
  readonly pair: PairToRead;
}

/**
 * What a first inspection has ready: a nose comparator on each upright pair where squareness is asked,
 * the thickness of each pair that is to be parallel, and a map of each face that is to be flat.
 */
export function waysToBegin(
  entry: Pick<PartEntry, 'datum' | 'requirements' | 'flatness'>,
  kit: KitEntry,
): readonly WayToBegin[] {
  const { datum, requirements } = entry;
  const parallel = requirements.filter(({ face, datum }) => areOpposite(face, datum));
  const square = requirements.filter(({ face, datum }) => !areOpposite(face, datum));
  const maps = facesToMap(entry);
  const isSquarenessAsked = square.length > 0 || (parallel.length === 0 && maps.length === 0);
  const upright = isSquarenessAsked ? pairsToRead({ datum, requirements: square }) : [];
  return [
    ...upright.filter(isUprightPair).map((pair) => ({ kind: 'nose comparator' as const, pair })),
    ...lyingPairs(parallel).map((pair) => ({ kind: thicknessBy(kit), pair })),
    ...maps.map((pair) => ({ kind: 'face map' as const, pair })),
  ];
}

/** Each pair that is to be parallel once, lying on the face that it is to be parallel to. */
function lyingPairs(parallel: PartEntry['requirements']): readonly PairToRead[] {
  return parallel
    .filter(({ face }, index) => {
      return parallel.findIndex((one) => one.face === face || one.datum === face) === index;
    })
    .map(({ face, datum }) => ({ faces: [face, datum], base: datum }));
}

/** A micrometer, unless the kit has an indicator out of the drawer and no micrometer. */
function thicknessBy({ chosen }: KitEntry): SetupKind {
  const hasMicrometer = chosen?.micrometer !== undefined || chosen?.indicator === undefined;
  return hasMicrometer ? 'micrometer' : 'over the top';
}
