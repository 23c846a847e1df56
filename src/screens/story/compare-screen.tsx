import { useLocation, useRoute } from 'preact-iso';
import { isPending } from '../../core/inspection/any-finding';
import { foundOf } from '../../core/inspection/found';
import type { LengthUnit } from '../../core/units/length';
import type { TypedLength } from '../../entry/typed-length';
import type { Link } from '../../state/chain';
import { type Comparison, compare, type InspectionState, statesOf } from '../../state/compare';
import { shop } from '../../state/shop';
import type { PartRecord } from '../../store/records';
import { Page } from '../../widgets/page';
import { SelectField } from '../../widgets/select-field';
import { requirementName } from '../../words/faces';
import { deviationNumber, foundInWords, deviation as shown } from '../../words/numbers';
import { asTyped } from '../../words/read-as';
import { moment } from '../../words/time';
import { VERDICT_LABELS } from '../../words/verdicts';
import { Message } from '../message';
import { to } from '../paths';
import { useUnitsButton } from '../units-button';
import { WithPart } from '../with-part';

/** Any two inspections of a part side by side, or one as it is and as it was. */
export function CompareScreen() {
  const { params, query } = useRoute();
  return (
    <WithPart id={params.part ?? ''}>
      {(part, links) => (
        <Compared part={part} links={links} asked={{ one: query.one, other: query.other }} />
      )}
    </WithPart>
  );
}

interface ComparedProps {
  readonly part: PartRecord;
  readonly links: readonly Link[];
  readonly asked: { readonly one: string | undefined; readonly other: string | undefined };
}

function Compared({ part, links, asked }: ComparedProps) {
  const { route } = useLocation();
  const units = useUnitsButton({ part });
  const states = statesOf(links);
  const one = states.find(({ key }) => key === asked.one) ?? states.at(-2);
  const other = states.find(({ key }) => key === asked.other) ?? states.at(-1);
  if (one === undefined || other === undefined) {
    return <Message title={part.entry.name} text="It takes two inspections to compare." />;
  }
  const comparison = compare(one.inspection, other.inspection, part.entry);
  const choose = (keys: { one?: string; other?: string }) => {
    const chosen = { one: one.key, other: other.key, ...keys };
    route(to.compare(part.id, chosen.one, chosen.other), true);
  };
  const options = states.map((state) => [state.key, stateName(state)] as const);
  return (
    <Page
      title={part.entry.name.trim() || 'Part without a name'}
      back={{ to: to.part(part.id), name: 'the part' }}
      side={units.button}
      opened={units.panel}
    >
      <section class="sheet" aria-labelledby="compare-heading">
        <h2 id="compare-heading">Two inspections side by side</h2>
        <SelectField
          {...{ id: 'compare-one', label: 'One', options, chosen: one.key }}
          onChoose={(key) => choose({ one: key })}
        />
        <SelectField
          {...{ id: 'compare-other', label: 'The other', options, chosen: other.key }}
          onChoose={(key) => choose({ other: key })}
        />
      </section>
      <Findings comparison={comparison} />
      <Typed comparison={comparison} />
    </Page>
  );
}

function stateName({ inspection, isEarlier }: InspectionState): string {
  const { made, changed, closed } = inspection;
  if (isEarlier) return `${moment(made)}, as finished ${moment(closed?.at ?? changed)}`;
  return `${moment(made)}${closed === undefined ? ', still open' : ''}`;
}

interface ComparisonProps {
  readonly comparison: Comparison;
}

/** What each of the two says of every requirement. */
function Findings({ comparison: { findings } }: ComparisonProps) {
  const { deviation } = shop.value.units;
  return (
    <section class="sheet" aria-labelledby="compare-findings">
      <h2 id="compare-findings">What they say</h2>
      {findings.length === 0 && <p>Neither says anything of a requirement.</p>}
      {findings.map(({ requirement, one, other, change }) => (
        <div key={`${requirement.face} ${requirement.datum}`} class="stack">
          <h3>{requirementName(requirement)}</h3>
          <dl class="facts">
            <dt>One</dt>
            <dd>{said(one, deviation)}</dd>
            <dt>The other</dt>
            <dd>{said(other, deviation)}</dd>
            {change !== undefined && (
              <>
                <dt>{changeName(change, deviation)}</dt>
                <dd>{shown(Math.abs(change), deviation)}</dd>
              </>
            )}
          </dl>
        </div>
      ))}
    </section>
  );
}

/** A change that shows no digit has no direction. */
function changeName(change: number, unit: LengthUnit): string {
  if (Number(deviationNumber(Math.abs(change), unit)) === 0) return 'Changed by';
  return change > 0 ? 'Wider by' : 'Narrower by';
}

function said(finding: Comparison['findings'][number]['one'], unit: LengthUnit): string {
  if (finding === undefined) return 'not fixed';
  const found = foundInWords(foundOf(finding), unit);
  return isPending(finding) ? found : `${found}, ${VERDICT_LABELS[finding.verdict].toLowerCase()}`;
}

/** Everything that was typed in either, with what differs marked. */
function Typed({ comparison: { typed } }: ComparisonProps) {
  return (
    <section class="sheet" aria-labelledby="compare-typed">
      <h2 id="compare-typed">What was typed</h2>
      <table class="compared">
        <caption>≠ marks what is not the same in both.</caption>
        <thead>
          <tr>
            <th scope="col">Reading</th>
            <th scope="col">One</th>
            <th scope="col">The other</th>
          </tr>
        </thead>
        <tbody>
          {typed.map(({ name, one, other, differs }) => (
            <tr key={name} class={differs ? 'differs' : undefined}>
              <th scope="row">
                {differs ? '≠ ' : ''}
                {name}
              </th>
              <td>{shownAs(one)}</td>
              <td>{shownAs(other)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function shownAs(typed: TypedLength | undefined): string {
  return typed === undefined ? '–' : asTyped(typed);
}
