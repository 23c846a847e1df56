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
  part: 'Name of the part',
  job: 'Job or drawing',
  taken: 'When the readings were begun, ISO 8601 in UTC',
  finished: 'When they were finished; empty while they are open',
  'measured by': 'Who finished them',
  requirement: 'What is asked',
  face: 'The face that it is asked of',
  datum: 'The face that it refers to; empty for flatness, which has none',
  'tolerance (µm)': 'Width that the zone may have',
  'width (µm)':
    'Width of the zone that was found, faces taken as planes; of a flatness the minimum zone',
  'expanded uncertainty (µm)': 'U of that width for a coverage of 95.45 %',
  'coverage factor': 'k in U = k·u, by the effective degrees of freedom',
  'width with form (µm)': 'Width with the form that was read; empty where none was',
  'probability of conformity (1)': 'From 0 to 1, with form where there is any',
  verdict: 'in, out or too close to call; not fixed where the readings do not tell',
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
