import type { Block } from '../part/block';
import type { Requirement } from '../part/requirement';
import type { Kit } from '../readings/kit';
import type { FaceMapReading, Reading } from '../readings/reading';
import { type FormPoint, formPointsOf } from '../zones/zone-with-form';
import { type OfForm, ofMeans, repeatedMaps } from './repeated-maps';

/**
 * The points where `readings` show form that counts for `requirement`, as `formPointsOf`, but that
 * traverses and grids which repeat each other are taken for one: at each place the mean of all. Each by
 * itself they would put noise beside noise, and every further seating would only widen the zone.
 */
export function formRead(
  requirement: Pick<Requirement, 'face' | 'datum'>,
  readings: readonly Reading[],
  block: Block,
  kit: Kit,
): readonly FormPoint[] {
  return repeatedMaps(readings.filter(showsFormOfZone)).flatMap(({ means, times }) =>
    formPointsOf(requirement, means, block, ofMeans(kit, times)),
  );
}

function showsFormOfZone(reading: Reading): reading is Exclude<OfForm, FaceMapReading> {
  const { kind } = reading;
  return kind === 'column' || kind === 'over the top' || kind === 'micrometer';
}
