import { disagrees } from '../core/inspection/disagreement';
import { adviceOn } from './advice';
import { workOut } from './answers';
import { exampleWith } from './example';
import { learnedRate, usualWay } from './learning';
import { nextToRead } from './next-to-read';

/**
 * Works an invented part out, a piece at each step, each step for a turn of its own: the browser compiles
 * a program as it first runs, and that is not to keep the first keys waiting. What comes of it is dropped.
 */
export function* warmUp(): Generator<void, void> {
  const unread = exampleWith('');
  yield;
  const beforehand = workOut(unread.inspection, unread.part.entry);
  yield;
  nextToRead(unread.inspection, beforehand);
  yield;
  const { part, inspection } = exampleWith('40');
  yield;
  const worked = workOut(inspection, part.entry);
  yield;
  if (worked.answer !== undefined) disagrees(worked.answer);
  yield;
  for (const piece of adviceOn(worked)?.pieces ?? []) {
    piece();
    yield;
  }
  learnedRate(usualWay(part));
}
