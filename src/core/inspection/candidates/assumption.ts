import type { Face } from '../../part/faces';
import { type Candidate, REMEDY_ID } from './candidate';

/** The toolmaker's word that the face and its opposite are parallel. */
export function assumption(face: Face): Candidate {
  return {
    remedy: { kind: 'assume parallel', face },
    readings: [{ kind: 'assumed parallel', id: REMEDY_ID, face, within: 1 }],
  };
}
