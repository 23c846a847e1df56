import { disagrees } from '../core/inspection/disagreement';
import { adviceOn } from './advice';
import { workOut } from './answers';
import { exampleWith } from './example';
import { learnedRate, usualWay } from './learning';
import { nextToRead } from './next-to-read';

/**
 * Works an invented part out, each piece for a turn of its own: the browser compiles a program as it
 * first runs, and that is not to keep the first keys waiting. What comes of it is dropped.
 */
export function* warmUp(): Generator<() => void> {
  const unread = exampleWith('');
  const { part, inspection } = exampleWith('40');
  const worked = () => workOut(inspection, part.entry);
  const beforehand = () => workOut(unread.inspection, unread.part.entry);
  yield beforehand;
  yield () => nextToRead(unread.inspection, beforehand());
  yield worked;
  const { answer } = worked();
  if (answer !== undefined) yield () => disagrees(answer);
  yield* adviceOn(worked())?.pieces ?? [];
  yield () => learnedRate(usualWay(part));
}
