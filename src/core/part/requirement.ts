import { areOpposite, type Face } from './faces';

/** What a drawing can ask of a face against a datum face (ISO 1101). */
export type RequirementKind = 'squareness' | 'parallelism';

/** One line of the drawing: `face` to the datum face, within a zone `tolerance` µm wide. */
export interface Requirement {
  readonly id: string;
  readonly face: Face;
  readonly datum: Face;
  readonly tolerance: number;
}

/** Opposite faces can be asked to be parallel, faces that share an edge to be square. */
export function kindOf(requirement: Pick<Requirement, 'face' | 'datum'>): RequirementKind {
  return areOpposite(requirement.face, requirement.datum) ? 'parallelism' : 'squareness';
}
