import { type AnyFinding, isPending } from '../../core/inspection/any-finding';
import type { SaidFinding } from '../../core/inspection/said';
import { kindOf } from '../../core/part/requirement';
import { COVERAGE, expanded } from '../../core/statistics/coverage';
import { coverageFactor } from '../../core/statistics/effective-degrees';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { saidByThisMethod } from '../../store/said';
import { type Cell, csvHead, csvLines } from './write-csv';

/** The columns by their headings, with units, and what stands under each. */
export const RESULT_COLUMNS = {
  part: 'its name',
  job: 'or drawing',
  taken: 'when begun, ISO 8601 in UTC',
  finished: 'empty while open',
  'measured by': 'who finished them',
  requirement: 'what is asked',
  face: 'of which it is asked',
  datum: 'that it refers to',
  'tolerance (µm)': 'width of the zone at most',
  'width (µm)': 'found, faces as planes',
  'expanded uncertainty (µm)': 'of that width, 95.45 %',
  'coverage factor': 'k in U = k·u',
  'width with form (µm)': 'empty where none was read',
  'probability of conformity (1)': 'with form',
  verdict: 'or not fixed',
} as const;

export const RESULT_HEADINGS = Object.keys(
  RESULT_COLUMNS,
) as readonly (keyof typeof RESULT_COLUMNS)[];

/** An inspection with what it says. */
export interface InspectionResult {
  readonly inspection: InspectionRecord;
  readonly findings: readonly AnyFinding[];
}

/** What each inspection says of each requirement, as CSV. */
export function resultsCsv(part: PartRecord, results: readonly InspectionResult[]): string {
  return `${csvHead(RESULT_HEADINGS)}${resultsLines(part, results)}`;
}

/** The same without the headings. */
export function resultsLines(part: PartRecord, results: readonly InspectionResult[]): string {
  const rows = results.flatMap(({ inspection, findings }) =>
    findings.map((finding) => [
      ...headOf(part, inspection),
      ...cellsOf(finding, foundThen(inspection, finding)),
    ]),
  );
  return csvLines(rows);
}

function headOf({ entry }: PartRecord, { made, closed }: InspectionRecord): readonly Cell[] {
  return [entry.name, entry.job, made, closed?.at ?? '', closed?.who ?? ''];
}

/** What was found when the readings were finished, as far as it still holds. */
function foundThen(
  inspection: InspectionRecord,
  { requirement }: AnyFinding,
): SaidFinding['found'] {
  return saidByThisMethod(inspection)?.find((said) => said.requirement === requirement.id)?.found;
}

function cellsOf(finding: AnyFinding, then: SaidFinding['found']): readonly Cell[] {
  const { requirement } = finding;
  const { face, datum, tolerance } = requirement;
  const asked = [kindOf(requirement), face, datum ?? '', rounded(tolerance)];
  if (!finding.fixed) return [...asked, '', '', '', '', '', 'not fixed'];
  const { zone } = finding;
  const known = isPending(finding) ? then : finding;
  const withForm = known && 'withForm' in known ? known.withForm : undefined;
  return [
    ...[...asked, rounded(zone.width), rounded(expanded(zone))],
    rounded(coverageFactor(COVERAGE, zone.degreesOfFreedom)),
    withForm === undefined ? '' : rounded(withForm.width),
    ...(known === undefined
      ? ['', 'not worked out yet']
      : [rounded(known.probability), known.verdict]),
  ];
}

/** To a picometre: more than any reading tells. */
function rounded(value: number): number {
  return Number(value.toFixed(6));
}
