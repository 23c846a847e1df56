import { areOpposite, type Face } from './faces';

/** What a drawing can ask of a face: against a datum face, or of its form alone (ISO 1101). */
export type RequirementKind = 'squareness' | 'parallelism' | 'flatness';

/** One line of the drawing: `face` to the datum face, within a zone `tolerance` µm wide. */
export interface Requirement {
  readonly id: string;
  readonly face: Face;
  readonly datum: Face;
  readonly tolerance: number;
}

/** One line of the drawing: `face` flat within a zone `tolerance` µm wide, whichever way the zone lies. */
export interface FlatnessRequirement {
  readonly id: string;
  readonly face: Face;
  /** Form has none. */
  readonly datum?: undefined;
  readonly tolerance: number;
}

/** Any line of the drawing. */
export type AnyRequirement = Requirement | FlatnessRequirement;

/** What a requirement asks, whatever its tolerance. */
export type Asked = Pick<AnyRequirement, 'face' | 'datum'>;

/** Without a datum a face is to be flat; opposite faces can be parallel, faces that share an edge square. */
export function kindOf({ face, datum }: Asked): RequirementKind {
  if (datum === undefined) return 'flatness';
  return areOpposite(face, datum) ? 'parallelism' : 'squareness';
}
