import type { FormAnswer } from '../../core/inspection/forms';
import { depthBehind } from '../../core/part/block';
import type { Part } from '../../core/part/part';
import { distanceFrom, edgesAsDrawn, placeEdges } from '../../entry/place-edges';
import { shop } from '../../state/shop';
import { FaceMap } from '../../widgets/drawings/face-map';
import { formName } from '../../words/forms';
import { deviationNumber } from '../../words/numbers';

interface FormMapProps {
  readonly answer: FormAnswer;
  readonly part: Part;
}

/** The face as it was read, levelled: how far each place stands over the lowest. */
export function FormMap({ answer, part }: FormMapProps) {
  const { deviation } = shop.value.units;
  const { face, axes, places, heights, minimumZone } = answer;
  const edges = placeEdges(face, part.datum);
  const [u, v] = axes;
  if (u === undefined || v === undefined) return null;
  const mapped = places.map((place, index) => {
    const point = { x: 0, y: 0, z: 0, [u]: place.u, [v]: place.v ?? 0 };
    const height = heights[index] ?? 0;
    const share = minimumZone > 0 ? height / minimumZone : 0.5;
    return {
      across: distanceFrom(edges.across, point, part.block),
      up: distanceFrom(edges.up, point, part.block),
      share,
      text: deviationNumber(height, deviation),
      word: minimumZone > 0 ? wordFor(share) : undefined,
    };
  });
  const numbers = mapped.map(({ text }, index) => `place ${index + 1} ${text}`).join(', ');
  return (
    <div>
      <FaceMap
        across={depthBehind(part.block, edges.across)}
        up={depthBehind(part.block, edges.up)}
        edgeNames={edgesAsDrawn(edges)}
        places={mapped}
        label={`${formName(answer)}, ${deviation} over the lowest: ${numbers}`}
      />
      <p class="soft small">
        Levelled to the minimum zone: {deviation} over its lower plane. Orange stands high, blue
        low.
      </p>
    </div>
  );
}

/** Several places may hold the zone, and are equal but for rounding. */
function wordFor(share: number): 'high' | 'low' | undefined {
  if (share > 1 - 1e-6) return 'high';
  return share < 1e-6 ? 'low' : undefined;
}
