import type { NewId } from '../../../src/entry/new-id';

/** Ids that are new each time and the same in every run: 'id 1', 'id 2', … */
export function countedIds(): NewId {
  let count = 0;
  return () => {
    count += 1;
    return `id ${count}`;
  };
}
