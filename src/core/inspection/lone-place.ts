import { snoopingLimit } from '../statistics/outliers';
import { minimumZonePlane } from '../zones/form/flatness';
import type { MinimumZone } from '../zones/form/minimum-zone-fit';
import type { FacePoint } from '../zones/form/points';

/** A place of a map that makes the zone wide all by itself. */
export interface LonePlace {
  /** Its place in the list of points. */
  readonly index: number;
  /** Width of the minimum zone of all others, µm. */
  readonly without: number;
  /** How far it stands over the middle of that zone, µm. */
  readonly off: number;
}

/** Any three places lie in a plane: of fewer others it says little that they do. */
const LEAST_PLACES = 6;

/** The others are called flat beside it where their zone is no wider than this part of the whole. */
const MUCH_FLATTER = 1 / 3;

/** Standard uncertainties of the width that noise makes up once in a thousand (normal, both sides). */
const BEYOND_NOISE = snoopingLimit(0.001);

/**
 * The place without which the face is much flatter than with it, by more than noise: a slip of one reading,
 * dirt or a burr looks so, and so does one real bump. None where another place would do as well, as of a
 * twist. The rule is ours; only a place that holds the zone can be the one.
 *
 * @param standard standard uncertainty of the width, µm.
 */
export function lonePlace(
  points: readonly FacePoint[],
  zone: MinimumZone,
  standard: number,
): LonePlace | undefined {
  if (points.length < LEAST_PLACES) return undefined;
  const most = Math.min(zone.width * MUCH_FLATTER, zone.width - BEYOND_NOISE * standard);
  const found = [...zone.upper, ...zone.lower].flatMap(({ index }) => {
    const others = minimumZonePlane(points.filter((_, at) => at !== index));
    const isFlat = others.spread === 'face' && others.width <= most;
    return isFlat ? [{ index, without: others.width, off: over(points[index]!, others) }] : [];
  });
  return found.length === 1 ? found[0] : undefined;
}

function over({ u, v, deviation }: FacePoint, { plane }: MinimumZone): number {
  const { middle, height, slopes } = plane;
  return deviation - height - slopes.u * (u - middle.u) - slopes.v * (v - middle.v);
}
