import { changedInDrawer } from '../../entry/changed-in-drawer';
import { fieldKey } from '../../entry/field-keys';
import type { DrawerItem } from '../../entry/instruments';
import type { Problems } from '../../entry/problems';
import {
  type InstrumentPart,
  instrumentPartsOf,
  isTurned,
  readWithItem,
} from '../../entry/read-with';
import type { SetupEntry } from '../../entry/setup-entry';
import { choosable } from '../../state/drawer';
import { shop } from '../../state/shop';
import { PlusOfDial } from '../../widgets/drawings/plus-of-dial';
import { FieldMessage } from '../../widgets/field-message';
import { Fold } from '../../widgets/fold';
import { SelectField } from '../../widgets/select-field';
import { changedInWords, itemLabel, KIND_NAMES, plusInWords } from '../../words/instruments';
import { CountsTheOtherWay } from './counts-the-other-way';

interface ReadWithProps<S extends SetupEntry> {
  readonly setup: S;
  readonly problems: Problems;
  readonly locked: boolean;
  readonly onChange: (change: (now: S) => S) => void;
}

/**
 * What a setup is read with, and which way its indicator counts, at the foot of its sheet. Nothing is asked where
 * the drawer is empty.
 */
export function ReadWith<S extends SetupEntry>(props: ReadWithProps<S>) {
  const { setup, problems, locked } = props;
  const parts = instrumentPartsOf(setup);
  const key = fieldKey.readWith(setup.id);
  const named = namesOf(parts);
  return (
    <>
      {setup.kind !== 'micrometer' && <Plus turned={isTurned(setup)} />}
      {locked && named !== '' && <p class="soft small">Read with {named}.</p>}
      {!asksFirst(parts) && <Choices {...props} />}
      {!locked && parts.map((part) => <Changed key={part.kind} {...props} part={part} />)}
      <FieldMessage id={messageOf(setup)} problem={problems.get(key)} />
    </>
  );
}

/** The id of what is wrong with what a setup is read with. */
function messageOf({ id }: SetupEntry): string {
  return `read-with-${id}-message`;
}

/** The same choice over the fields for what the instrument shows: where there is another than the kit's, or it counts the other way. */
export function ReadWithFirst<S extends SetupEntry>(props: ReadWithProps<S>) {
  const { setup, locked, onChange } = props;
  const parts = instrumentPartsOf(setup);
  return (
    <>
      {!locked && <CountsTheOtherWay parts={parts} onChange={onChange} />}
      {asksFirst(parts) && <Choices {...props} />}
    </>
  );
}

/** True where the drawer has another instrument to read with than the kit. */
function asksFirst(parts: readonly InstrumentPart[]): boolean {
  const { chosen } = shop.value.kit;
  return parts.some(({ kind }) => choicesOf(kind).some(({ id }) => id !== chosen?.[kind]?.id));
}

function namesOf(parts: readonly InstrumentPart[]): string {
  return parts.flatMap(({ chosen }) => chosen?.name.trim() || []).join(', ');
}

function Choices<S extends SetupEntry>(props: ReadWithProps<S>) {
  const { setup, problems, locked } = props;
  const parts = instrumentPartsOf(setup);
  if (locked || !parts.some(({ kind, chosen }) => chosen || choicesOf(kind).length > 0))
    return null;
  return (
    <Fold
      summary={`Read with: ${namesOf(parts) || 'the kit'}`}
      open={problems.has(fieldKey.readWith(setup.id))}
    >
      <div class="stack">
        {parts.map((part) => (
          <PartChoice key={part.kind} {...props} part={part} />
        ))}
      </div>
    </Fold>
  );
}

function Plus({ turned }: { readonly turned: boolean }) {
  if (!turned) return <p class="soft small">{plusInWords('pushed in')}</p>;
  return (
    <div class="note note-warning">
      <PlusOfDial plus="let out" />
      <p>
        <b>{plusInWords('let out')}</b>
      </p>
    </div>
  );
}

/** Things in the drawer that can be read with: those whose figures can be read. */
function choicesOf(kind: DrawerItem['kind']): readonly DrawerItem[] {
  return choosable.value.filter((item) => item.kind === kind);
}

interface PartChoiceProps<S extends SetupEntry> extends ReadWithProps<S> {
  readonly part: InstrumentPart;
}

function PartChoice<S extends SetupEntry>(props: PartChoiceProps<S>) {
  const { setup, part, problems, onChange } = props;
  const { kind, chosen } = part;
  const choices = choicesOf(kind);
  if (choices.length === 0 && chosen === undefined) return null;
  const isWrong = chosen !== undefined && problems.has(fieldKey.readWith(setup.id));
  const isGone = chosen !== undefined && !choices.some(({ id }) => id === chosen.id);
  return (
    <SelectField
      id={`${kind}-${setup.id}`}
      label={KIND_NAMES[kind]}
      options={[
        ['', 'That of the kit'],
        ...(isGone ? [[chosen.id || GONE, chosen.name || KIND_NAMES[kind]] as const] : []),
        ...choices.map((item) => [item.id, itemLabel(item)] as const),
      ]}
      chosen={chosen === undefined ? '' : chosen.id || GONE}
      wrong={isWrong ? messageOf(setup) : undefined}
      onChoose={(id) => {
        const item = choices.find((one) => one.id === id);
        if (item !== undefined || id === '') onChange((now) => readWithItem(now, kind, item));
      }}
    />
  );
}

/** Says that an instrument is otherwise in the drawer by now, and takes it over as it is there. */
function Changed<S extends SetupEntry>({ part, onChange }: PartChoiceProps<S>) {
  const { kind, chosen } = part;
  const item = choicesOf(kind).find(({ id }) => id === chosen?.id);
  const figures = item && chosen ? changedInDrawer(chosen, item) : [];
  if (item === undefined || figures.length === 0) return null;
  return (
    <div class="note stack">
      <p>{changedInWords(chosen?.name.trim() || KIND_NAMES[kind], figures)}</p>
      <button
        type="button"
        class="button"
        onClick={() => onChange((now) => readWithItem(now, kind, item))}
      >
        Take it as it is in the drawer now
      </button>
    </div>
  );
}

/** Stands for an instrument that has no id: one that was only known by the figures of a kit. */
const GONE = 'as read';
