import type { PartEntry } from '../../entry/part-entry';
import { readingNames } from '../../entry/reading-names';
import { isBlank } from '../../entry/typed-length';
import type { Worked } from '../../state/answers';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import {
  fitInWords,
  ifThisInWords,
  oneOfSuspectsInWords,
  suspectInWords,
} from '../../words/checks';
import { pairName, requirementName } from '../../words/faces';
import { spansInWords } from '../../words/form';
import { asTyped } from '../../words/read-as';
import { kitAssumptionInWords, PLANES_IN_WORDS } from '../../words/record';

interface RecordAssumedProps {
  readonly entry: PartEntry;
  readonly inspection: InspectionRecord;
  readonly worked: Worked;
}

/** What the results take for granted, and how well the readings agree. */
export function RecordAssumed({ entry, inspection, worked }: RecordAssumedProps) {
  const { answer } = worked;
  const { deviation, size } = shop.value.units;
  const names = readingNames(inspection.setups);
  const words = inspection.setups.flatMap((setup) =>
    setup.kind !== 'assumed parallel' || isBlank(setup.within)
      ? []
      : [
          `That ${pairName(setup.faces)} are parallel within ${asTyped(setup.within)}: somebody’s word, not measured.`,
        ],
  );
  const spans = (answer?.findings ?? []).flatMap((finding) => {
    const text = finding.fixed ? spansInWords(finding.formSpans, size) : undefined;
    return text === undefined ? [] : [`${requirementName(finding.requirement)}: ${text}`];
  });
  const suspects = answer?.suspects ?? [];
  const isOne = suspects.length === 1;
  const off = suspects.map((check) =>
    (isOne ? suspectInWords : ifThisInWords)(
      names.get(check.reading) ?? 'A reading',
      check,
      deviation,
    ),
  );
  return (
    <section>
      <h3>What is assumed, and how well the readings agree</h3>
      <ul>
        {words.map((text) => (
          <li key={text}>{text}</li>
        ))}
        <li>{PLANES_IN_WORDS}</li>
        {spans.map((text) => (
          <li key={text}>{text}</li>
        ))}
        <li>{kitAssumptionInWords(entry.material)}</li>
        {answer !== undefined && <li>{fitInWords(answer.fit)}</li>}
        {suspects.length > 1 && <li>{oneOfSuspectsInWords(suspects.length)}</li>}
        {off.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </section>
  );
}
