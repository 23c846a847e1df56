import type { Finding } from '../../core/inspection/findings';
import type { SidesAnswer } from '../../core/inspection/sides';
import { oppositeFace } from '../../core/part/faces';

export type NotFixedFinding = Extract<Finding, { fixed: false }>;

/** Requirements that the readings do not fix and that the same further reading would. */
export type NotFixedGroup = readonly [NotFixedFinding, ...NotFixedFinding[]];

/** True where these are sides of the pair that the requirement asks about, and on its datum. */
export function isOfPair(sides: SidesAnswer, { requirement }: Finding): boolean {
  return sides.base === requirement.datum && sides.faces.includes(requirement.face);
}

/** What is not fixed, told once for each pair of faces and each way to mend it. */
export function notFixedGroups(findings: readonly Finding[]): readonly NotFixedGroup[] {
  const groups = new Map<string, NotFixedGroup>();
  for (const finding of findings) {
    if (finding.fixed) continue;
    const { face, datum } = finding.requirement;
    const pair = [face, oppositeFace(face)].sort().join();
    const key = `${pair} ${datum} ${kindsOf(finding)}`;
    const known = groups.get(key);
    groups.set(key, known === undefined ? [finding] : [...known, finding]);
  }
  return [...groups.values()];
}

/** The ways to mend it, whichever of the two faces is asked about. */
function kindsOf({ remedies }: NotFixedFinding): string {
  return remedies.map((set) => set.map(({ kind }) => kind).join()).join(';');
}
