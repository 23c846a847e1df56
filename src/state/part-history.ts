import { type AnyFixedFinding, allFindings } from '../core/inspection/any-finding';
import type { AnyRequirement } from '../core/part/requirement';
import type { PartEntry } from '../entry/part-entry';
import type { InspectionRecord, WorkRecord } from '../store/records';
import { workOut } from './answers';
import type { Link } from './chain';

/** One requirement through a part's chain, in the order of time. */
export interface RequirementHistory {
  /** As the latest readings have it. */
  readonly requirement: AnyRequirement;
  readonly points: readonly HistoryPoint[];
}

/** What one inspection found, and the work that went before it. */
export interface HistoryPoint {
  readonly inspection: InspectionRecord;
  readonly finding: AnyFixedFinding;
  readonly worked: readonly WorkRecord[];
}

/** The history of every requirement that any inspection has fixed. */
export function historiesOf(
  links: readonly Link[],
  entry: PartEntry,
): readonly RequirementHistory[] {
  const histories = new Map<string, RequirementHistory>();
  // Work that no inspection has fixed the requirement after, by requirement.
  const worked = new Map<string, number>();
  links.forEach((link, place) => {
    if (link.kind !== 'inspection') return;
    for (const finding of allFindings(workOut(link, entry).answer)) {
      if (!finding.fixed) continue;
      const { requirement } = finding;
      const name = `${requirement.face} ${requirement.datum}`;
      const since = links.slice(worked.get(name) ?? 0, place);
      const point = { inspection: link, finding, worked: since.filter(isWork) };
      const points = [...(histories.get(name)?.points ?? []), point];
      histories.set(name, { requirement, points });
      worked.set(name, place);
    }
  });
  return [...histories.values()];
}

function isWork(link: Link): link is WorkRecord {
  return link.kind === 'work';
}
