import type { Finding } from '../../core/inspection/findings';
import { isPending } from '../../core/inspection/said';
import { kindOf } from '../../core/part/requirement';
import { COVERAGE, expanded } from '../../core/statistics/coverage';
import { coverageFactor } from '../../core/statistics/effective-degrees';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { type Cell, writeCsv } from './write-csv';

/** The headings, with units. */
export const RESULT_HEADINGS = [
  'part',
  'job',
  'taken',
  'finished',
  'measured by',
  'requirement',
  'face',
  'datum',
  'tolerance (µm)',
  'width (µm)',
  'expanded uncertainty (µm)',
  'coverage factor',
  'width with form (µm)',
  'probability of conformity (1)',
  'verdict',
] as const;

/** What each inspection says of each requirement, as CSV. */
export function resultsCsv(
  part: PartRecord,
  results: readonly {
    readonly inspection: InspectionRecord;
    readonly findings: readonly Finding[];
  }[],
): string {
  const rows = results.flatMap(({ inspection, findings }) =>
    findings.map((finding) => [...headOf(part, inspection), ...cellsOf(finding)]),
  );
  return writeCsv(RESULT_HEADINGS, rows);
}

function headOf({ entry }: PartRecord, { made, closed }: InspectionRecord): readonly Cell[] {
  return [entry.name, entry.job, made, closed?.at ?? '', closed?.who ?? ''];
}

function cellsOf(finding: Finding): readonly Cell[] {
  const { requirement } = finding;
  const { face, datum, tolerance } = requirement;
  const asked = [kindOf(requirement), face, datum, rounded(tolerance)];
  if (!finding.fixed) return [...asked, '', '', '', '', '', 'not fixed'];
  const { zone, withForm, probability, verdict } = finding;
  const known = isPending(finding) ? ['', 'not worked out yet'] : [rounded(probability), verdict];
  return [
    ...[...asked, rounded(zone.width), rounded(expanded(zone))],
    rounded(coverageFactor(COVERAGE, zone.degreesOfFreedom)),
    withForm === undefined ? '' : rounded(withForm.width),
    ...known,
  ];
}

/** To a picometre: more than any reading tells. */
function rounded(value: number): number {
  return Number(value.toFixed(6));
}
