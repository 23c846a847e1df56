import { depthBehind } from '../../core/part/block';
import type { Face } from '../../core/part/faces';
import type { Part } from '../../core/part/part';
import { edgesAsDrawn, placeEdges } from '../../entry/place-edges';
import { Thicknesses } from '../../widgets/drawings/thicknesses';
import type { PlaceEntry } from './place-fields';
import { placesOnFace } from './places-on-face';
import { nearest, TapToGo, type TapToGoProps } from './tap-to-go';

interface FacePlacesProps {
  readonly face: Face;
  readonly part: Part;
  readonly places: readonly (PlaceEntry & { readonly text: string })[];
  /** Which of the places is being read. */
  readonly active: number;
  readonly label: string;
  /** Told which of the places was tapped. */
  readonly onPick: (index: number) => void;
}

/** The face with the places that are read on it. */
export function FacePlaces({ face, part, places, active, label, onPick }: FacePlacesProps) {
  const edges = placeEdges(face, part.datum);
  const drawn = placesOnFace(face, places, part, active);
  const pick: TapToGoProps['onTap'] = ({ x, y }, drawing) => {
    const dots = [...drawing.querySelectorAll('.drawing-place')];
    const picked = drawn[nearest(dots, (dot) => Math.hypot(dot.x - x, dot.y - y)) ?? -1];
    if (picked !== undefined) onPick(picked.number - 1);
  };
  return (
    <TapToGo onTap={pick}>
      <Thicknesses
        across={depthBehind(part.block, edges.across)}
        up={depthBehind(part.block, edges.up)}
        edgeNames={edgesAsDrawn(edges)}
        places={drawn}
        label={label}
      />
    </TapToGo>
  );
}
