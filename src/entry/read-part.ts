import { AXES, type Axis } from '../core/part/faces';
import type { Part } from '../core/part/part';
import type { FlatnessRequirement, Requirement } from '../core/part/requirement';
import { fieldKey } from './field-keys';
import { limitSaid } from './limits';
import { expansionOf } from './material';
import type { PartEntry } from './part-entry';
import { anyWaiting, anyWrong, ProblemList, type Problems } from './problems';
import { type Limits, readLength } from './read-length';
import { readRoughness } from './roughness';
import { readSizeLimits } from './size-limits';
import type { TypedLength } from './typed-length';

/** A part is read only when all of its sizes are; a line of the drawing that cannot be read is left out. */
export interface PartRead {
  readonly part: Part | undefined;
  readonly problems: Problems;
}

const SIZE: Limits = {
  least: 500,
  most: 3_000_000,
  tooSmall: (unit) => `Under ${limitSaid(0.5, unit)}: too thin to stand on a plate`,
  tooLarge: 'Over 3 m: check the size and the unit',
};

const TOLERANCE: Limits = {
  least: 0.01,
  most: 1000,
  tooSmall: 'A tolerance is above 0',
  tooLarge: (unit) => `Over ${limitSaid(1, unit)}: check the tolerance and the unit`,
};

/** Reads what was typed of a part. */
export function readPart(entry: PartEntry): PartRead {
  const problems = new ProblemList();
  if (entry.name.trim() === '') problems.missing(fieldKey.name(), 'Name it, to find it again');
  const sizes = AXES.flatMap((axis) => {
    const size = readLength(entry.size[axis], fieldKey.size(axis), problems, SIZE, 'Needed first');
    return size === undefined ? [] : [[axis, size / 1000] as const];
  });
  const requirements = readRequirements(entry, problems);
  const flatness = readFlatness(entry, problems);
  const sizeLimits = readSizeLimits(entry, problems);
  const roughness = readRoughness(entry.finish, problems);
  if (sizes.length < AXES.length) return { part: undefined, problems: problems.all };
  const size = Object.fromEntries(sizes) as Record<Axis, number>;
  return {
    part: {
      block: { size, expansion: expansionOf(entry.material) },
      datum: entry.datum,
      requirements,
      finished: entry.finished,
      ...(flatness.length > 0 && { flatness }),
      ...(Object.keys(sizeLimits).length > 0 && { sizeLimits }),
      ...(roughness !== undefined && { roughness }),
    },
    problems: problems.all,
  };
}

function readRequirements(entry: PartEntry, problems: ProblemList): readonly Requirement[] {
  return entry.requirements.flatMap(({ id, face, datum, tolerance }) => {
    if (face === datum) {
      problems.wrong(fieldKey.faces(id), 'A face cannot be its own datum');
      return [];
    }
    const width = readTolerance(id, tolerance, problems);
    return width === undefined ? [] : [{ id, face, datum, tolerance: width }];
  });
}

function readFlatness({ flatness = [] }: PartEntry, problems: ProblemList) {
  return flatness.flatMap(({ id, face, tolerance }): readonly FlatnessRequirement[] => {
    const width = readTolerance(id, tolerance, problems);
    return width === undefined ? [] : [{ id, face, tolerance: width }];
  });
}

/** The width of the zone that the drawing allows, µm. */
function readTolerance(requirement: string, typed: TypedLength, problems: ProblemList) {
  const field = fieldKey.tolerance(requirement);
  return readLength(typed, field, problems, TOLERANCE, 'How much does the drawing allow?');
}

/** True where the part is complete enough to be measured, and nothing in it is wrong or still being read. */
export function isReady({ part, problems }: PartRead): boolean {
  return part !== undefined && !anyWrong(problems) && !anyWaiting(problems);
}
