import { depthBehind } from '../../core/part/block';
import { type Face, oppositeFace } from '../../core/part/faces';
import type { Part } from '../../core/part/part';
import { placeEdges } from '../../entry/place-edges';
import { Thicknesses } from '../../widgets/drawings/thicknesses';
import type { PlaceEntry } from './place-fields';
import { placesOnFace } from './places-on-face';

interface FacePlacesProps {
  readonly face: Face;
  readonly part: Part;
  readonly places: readonly (PlaceEntry & { readonly text: string })[];
  /** Which of the places is being read. */
  readonly active: number;
  readonly label: string;
}

/** The face with the places that are read on it. */
export function FacePlaces({ face, part, places, active, label }: FacePlacesProps) {
  const edges = placeEdges(face, part.datum);
  return (
    <Thicknesses
      across={depthBehind(part.block, edges.across)}
      up={depthBehind(part.block, edges.up)}
      edgeNames={{
        bottom: edges.up,
        top: oppositeFace(edges.up),
        left: edges.across,
        right: oppositeFace(edges.across),
      }}
      places={placesOnFace(face, places, part, active)}
      label={label}
    />
  );
}
