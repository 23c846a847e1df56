import { type AnyFinding, type AnyFixedFinding, allFindings } from '../core/inspection/any-finding';
import { foundOf } from '../core/inspection/found';
import type { PartEntry } from '../entry/part-entry';
import { isBlank, type TypedLength } from '../entry/typed-length';
import { typedRows } from '../entry/typed-rows';
import type { InspectionRecord } from '../store/records';
import { workOut } from './answers';
import type { Link } from './chain';
import { versionsOf } from './versions';

/** An inspection as it is, or as it was before it was opened again. */
export interface InspectionState {
  /** The id of the inspection, for an earlier version followed by a space and the id of that. */
  readonly key: string;
  readonly inspection: InspectionRecord;
  readonly isEarlier: boolean;
}

/** All states of all inspections of the open part, oldest first. */
export function statesOf(links: readonly Link[]): readonly InspectionState[] {
  return links.flatMap((link) => {
    if (link.kind !== 'inspection') return [];
    const earlier = versionsOf(link).map(({ id, record }) => {
      return { key: `${link.id} ${id}`, inspection: record, isEarlier: true };
    });
    return [...earlier, { key: link.id, inspection: link, isEarlier: false }];
  });
}

/** One thing in two inspections; undefined in the one that does not have it. */
interface Beside<T> {
  readonly one: T | undefined;
  readonly other: T | undefined;
}

/** Two inspections side by side. */
export interface Comparison {
  readonly findings: readonly (Beside<AnyFixedFinding> & {
    /** Face and datum, none for flatness, tell the same requirement, whatever line of the drawing it stands in. */
    readonly requirement: AnyFinding['requirement'];
    /** µm that the zone became wider; undefined where either did not fix it. */
    readonly change: number | undefined;
  })[];
  readonly typed: readonly (Beside<TypedLength> & {
    readonly name: string;
    readonly differs: boolean;
  })[];
}

export function compare(
  one: InspectionRecord,
  other: InspectionRecord,
  entry: PartEntry,
): Comparison {
  return { findings: findingsBeside(one, other, entry), typed: typedBeside(one, other, entry) };
}

function findingsBeside(one: InspectionRecord, other: InspectionRecord, entry: PartEntry) {
  return pairs(findingsByName(one, entry), findingsByName(other, entry)).flatMap(({ pair }) => {
    const [before, after] = pair;
    const { requirement } = after ?? before ?? {};
    if (requirement === undefined) return [];
    const [fixed, then] = [asFixed(before), asFixed(after)];
    const change = fixed && then && foundOf(then).value - foundOf(fixed).value;
    return [{ requirement, one: fixed, other: then, change }];
  });
}

function findingsByName(inspection: InspectionRecord, entry: PartEntry) {
  const findings = allFindings(workOut(inspection, entry).answer);
  return new Map(
    findings.map((finding) => {
      const { face, datum } = finding.requirement;
      return [`${face} ${datum}`, finding] as const;
    }),
  );
}

function asFixed(finding: AnyFinding | undefined): AnyFixedFinding | undefined {
  return finding?.fixed ? finding : undefined;
}

/** A side that only one of them reads from two bases is called by its base in both, so that it finds its like. */
function typedBeside(one: InspectionRecord, other: InspectionRecord, { datum }: PartEntry) {
  const among = [...one.setups, ...other.setups];
  const byName = ({ setups }: InspectionRecord): ReadonlyMap<string, TypedLength> => {
    const typed = typedRows(setups, datum, among).filter((row) => !isBlank(row.typed));
    return new Map(typed.map((row) => [row.name, row.typed]));
  };
  return pairs(byName(one), byName(other)).map(({ name, pair: [a, b] }) => ({
    name,
    one: a,
    other: b,
    differs: a?.text.trim() !== b?.text.trim() || a?.unit !== b?.unit,
  }));
}

/** What stands under the same name in two maps, in the order of the first and then of the second. */
function pairs<T>(one: ReadonlyMap<string, T>, other: ReadonlyMap<string, T>) {
  return [...new Set([...one.keys(), ...other.keys()])].map((name) => {
    return { name, pair: [one.get(name), other.get(name)] as const };
  });
}
