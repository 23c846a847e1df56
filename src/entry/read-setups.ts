import type { PlannedPlace } from '../core/inspection/flatness';
import type { Part } from '../core/part/part';
import type { ParallelAssumption, Reading } from '../core/readings/reading';
import { fieldKey } from './field-keys';
import { WITHIN } from './limits';
import { ofItsInstrument } from './of-its-instrument';
import { ProblemList, type Problems } from './problems';
import { readColumn } from './read-column';
import { readLength } from './read-length';
import { readMicrometer } from './read-micrometer';
import { readNoseComparator } from './read-nose-comparator';
import { plannedPlaces, readOverFace } from './read-over-face';
import type { AssumptionSetup, SetupEntry } from './setup-entry';

/** The readings that could be made of what was typed. */
export interface SetupsRead {
  readonly readings: readonly Reading[];
  readonly problems: Problems;
  /** Places of maps that are still to be read. */
  readonly planned: readonly PlannedPlace[];
}

/** Reads everything typed in one inspection of `part`. */
export function readSetups(setups: readonly SetupEntry[], part: Part): SetupsRead {
  const problems = new ProblemList();
  const readings = setups.flatMap((setup) =>
    ofItsInstrument(setup, readSetup(setup, part, problems), problems),
  );
  const planned = setups.flatMap((setup) => plannedPlaces(setup, part));
  return { readings, problems: problems.all, planned };
}

function readSetup(setup: SetupEntry, part: Part, problems: ProblemList): readonly Reading[] {
  switch (setup.kind) {
    case 'nose comparator':
      return readNoseComparator(setup, part, problems);
    case 'column':
      return readColumn(setup, part, problems);
    case 'micrometer':
      return readMicrometer(setup, part, problems);
    case 'over the top':
    case 'face map':
      return readOverFace(setup, part, problems);
    case 'assumed parallel':
      return readAssumption(setup, problems);
  }
}

function readAssumption(
  setup: AssumptionSetup,
  problems: ProblemList,
): readonly ParallelAssumption[] {
  const key = fieldKey.within(setup.id);
  const within = readLength(setup.within, key, problems, WITHIN, 'Parallel within how much?');
  if (within === undefined) return [];
  return [{ kind: setup.kind, id: setup.id, face: setup.faces[0], within }];
}
