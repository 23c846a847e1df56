import type { FixedFlatness, MapLack, PlacesToRead } from '../core/inspection/flatness';
import type { Face } from '../core/part/faces';
import type { LengthUnit } from '../core/units/length';
import { swappedInWords } from './checks';
import { spansBriefly } from './form';
import { deviation } from './numbers';
import { verdictInWords } from './verdicts';

/** What is missing before the flatness of `face` is known, and what would tell it. */
export function lackInWords(lack: MapLack, face: Face, unit: LengthUnit): string {
  if (lack.kind === 'places to read') {
    return `${mapSoFarInWords(lack, unit)} Read the other places, or remove under ‘Where the places are’ what is not to be read.`;
  }
  const { kind, thickness } = lack;
  const map = `Map the ${face} on jacks, at four places or more that spread over it; nine are better.`;
  const over = thickness
    ? ` An indicator over the top shows the thickness: the form of both faces, and no flatness.`
    : '';
  switch (kind) {
    case 'no map':
      return `${map}${over}`;
    case 'few places':
      return `Any three places lie in a plane. ${map}${over}`;
    case 'on a line':
      return `All places lie on one line. ${map}${over}`;
  }
}

/** What is known of a map of which places are still to be read. */
export function mapSoFarInWords(lack: PlacesToRead, unit: LengthUnit): string {
  const { places, width, unread } = lack;
  return `Read at ${places} of ${places + unread} places: ${deviation(width, unit)} out of flat so far, and what is still empty can only add to it.`;
}

/** Whether the face is flat enough, and how sure that is. */
export function flatnessInWords({ probability, verdict, toSimulate }: FixedFlatness): string {
  if (toSimulate !== undefined) return 'Working out how much of it noise may have made…';
  return verdictInWords({ probability, verdict });
}

/**
 * Asks about one place that stands off; the zone of the `others` is `without` µm wide.
 *
 * @param swapped what was typed with two digits the other way round, where it would lie with them.
 */
export function loneInWords(
  name: string,
  others: number,
  without: number,
  unit: LengthUnit,
  swapped?: string,
): string {
  return `${name} stands off by itself: the other ${others} places lie within ${deviation(without, unit)}. ${swappedInWords(swapped)}Is it a slip, dirt or a burr? Wipe it and read it once more.`;
}

/** Below so many places a crown along an edge, or a dip between them, is easily missed. */
const MANY_PLACES = 9;

/** What of the face was read, and what not. */
export function mappedInWords(found: FixedFlatness, unit: 'mm' | 'in'): string {
  const { places, spans, maps, unread } = found;
  const span = spansBriefly(spans, unit);
  return [
    maps > 1 ? `The widest of ${maps} maps, with ${places} places` : `Read at ${places} places`,
    span === undefined ? '' : ` over ${span}`,
    unread === 0 ? '' : `, ${unread} still to be read, which can only add to it`,
    '. What stands up or dips between and beyond them is not seen',
    places < MANY_PLACES ? ': nine places or more see more.' : '.',
  ].join('');
}

/** How the chance of a flatness comes about. */
export function flatnessChanceInWords(found: FixedFlatness, unit: LengthUnit): string {
  const { zone, requirement } = found;
  const room = requirement.tolerance - zone.width;
  if (room < 0) {
    return 'Noise widens a zone, so a width over the tolerance is simulated: the chance is how often a face just flat enough, of the form nearest to this, would come out as wide, and no more than a half.';
  }
  return `The tolerance ${deviation(requirement.tolerance, unit)} less the width is ${deviation(room, unit)}: with the uncertainty of the readings that hold the zone, the normal distribution gives the chance (JCGM 106). Noise elsewhere only widens a zone.`;
}

/** What would bring a verdict nearer that is too close to call. */
export const MAP_AGAIN_IN_WORDS =
  'Map the same places again: the mean of several maps is surer, but for what the plate adds.';

/** What has to come off a face that is not flat enough; `high` names the places where it stands highest. */
export function flattenInWords(
  { requirement, zone, verdict, lone }: FixedFlatness,
  high: readonly string[],
  unit: LengthUnit,
): string {
  const sure =
    lone !== undefined
      ? ' But one place stands off by itself: read that once more first.'
      : verdict === 'out'
        ? ''
        : ' Whether it is out is not sure: map it again first.';
  return `The ${requirement.face} is out of flat by ${deviation(zone.width, unit)}. Down to its lowest place, at least that much comes off where it stands highest: ${high.join('; ')}. Lap it on the flat plate or grind it; how much a pass flattens is not foretold, so map it again after.${sure}`;
}
