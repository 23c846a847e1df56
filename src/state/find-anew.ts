import { METHOD } from '../core/inspection/method';
import type { FoundComparator, FoundPass, ToKeep } from '../store/found';
import type { PartRecord } from '../store/records';
import { loadChain } from '../store/shop-store';
import { isRead } from './answers-apart';
import { chain, type Link } from './chain';
import { comparatorsIn, passIn } from './found-in';
import { whenAtRest } from './idle';
import { kitMark } from './kit-mark';
import { oldestFirst } from './oldest-first';
import { newRecord, parts } from './shop';
import { level } from './shop-settings';
import { summaries } from './summaries';

/**
 * What the inspections of a part have found, each in a turn of its own when there is nothing else to
 * do. Undefined where it is no longer wanted, or something has changed meanwhile.
 */
export async function findAnew(
  part: PartRecord,
  isWanted: () => boolean,
): Promise<ToKeep | undefined> {
  const { id, entry } = part;
  // Without a level open readings say nothing.
  if (level.peek() === undefined) return undefined;
  const [summary, kit] = [summaries.peek().get(id), kitMark()];
  const links = await linksOf(id);
  const goesOn = async () => {
    await new Promise<void>((resolve) => whenAtRest(resolve));
    const open = chain.peek();
    const isAsItWas =
      parts.peek().get(id) === part &&
      summaries.peek().get(id) === summary &&
      kitMark() === kit &&
      (open?.part !== id || open.links === links);
    return isAsItWas && isWanted();
  };
  const comparators: FoundComparator[] = [];
  for (const link of links) {
    if (link.kind !== 'inspection') continue;
    if (!(await goesOn()) || !(await isRead(link, entry))) return undefined;
    comparators.push(...comparatorsIn(link, entry));
  }
  const passes: FoundPass[] = [];
  for (const link of links) {
    if (link.kind !== 'work') continue;
    if (!(await goesOn())) return undefined;
    passes.push(...passIn(link, links, entry));
  }
  const base = newRecord();
  const isOpen = links.some((link) => link.kind === 'inspection' && link.closed === undefined);
  const mark = { at: base.made, method: METHOD, ...(isOpen && { kit }) };
  const found = { part: id, at: base.made, comparators, passes };
  return { found, mark, part, links, summary, base };
}

async function linksOf(part: string): Promise<readonly Link[]> {
  const open = chain.peek();
  return open?.part === part ? open.links : oldestFirst((await loadChain(part)).records);
}
