import { signal } from '@preact/signals';
import type { InspectionRecord } from '../store/records';

/** What of an inspection is changed at the plate, hence can be taken back. */
type Content = Pick<InspectionRecord, 'setups' | 'leftOut'>;

/** One change that can be taken back. */
interface Step {
  readonly before: Content;
  /** Where in the record the text is that was typed; undefined for any other change. */
  readonly typedAt: string | undefined;
  /** When it was changed, ms since the page was opened: the clock of the day may be set back meanwhile. */
  readonly at: number;
}

interface History {
  readonly inspection: string;
  /** What it holds by now: changed otherwise, such as in another tab, nothing of before fits any more. */
  readonly content: Content;
  readonly steps: readonly Step[];
}

/** The changes of the inspection that was changed last, since the app was opened. */
const history = signal<History | undefined>(undefined);

/** So many changes back one can go. */
const DEEPEST = 50;

/** Typing in one field with shorter pauses than this is one change, ms. */
const PAUSE = 2000;

/** Notes that `before` was changed into `after`. */
export function noteChange(before: InspectionRecord, after: InspectionRecord): void {
  const at = performance.now();
  const steps = stepsTo(before);
  const typedAt = typedBetween(before.setups, after.setups);
  const last = steps.at(-1);
  const goesOn =
    last !== undefined && typedAt !== undefined && last.typedAt === typedAt && at - last.at < PAUSE;
  const step = { before: goesOn ? last.before : contentOf(before), typedAt, at };
  history.value = {
    inspection: after.id,
    content: contentOf(after),
    steps: [...(goesOn ? steps.slice(0, -1) : steps), step].slice(-DEEPEST),
  };
}

/** Notes that `before` was put into other units as `after`: what can be taken back goes along. */
export function noteConversion(
  before: InspectionRecord,
  after: InspectionRecord,
  convert: (setups: InspectionRecord['setups']) => InspectionRecord['setups'],
): void {
  const steps = stepsTo(before).map((step) => {
    return { ...step, before: { ...step.before, setups: convert(step.before.setups) } };
  });
  history.value = { inspection: after.id, content: contentOf(after), steps };
}

/** How many changes of `inspection`, as it is by now, can be taken back. */
export function stepsBack(inspection: InspectionRecord): number {
  return inspection.closed === undefined ? stepsTo(inspection).length : 0;
}

/** The inspection without its last change; undefined where there is none to take back. */
export function withoutLastChange(inspection: InspectionRecord): InspectionRecord | undefined {
  const steps = stepsTo(inspection);
  const last = steps.at(-1);
  if (last === undefined || inspection.closed !== undefined) return undefined;
  const { leftOut: _, ...rest } = inspection;
  history.value = {
    inspection: inspection.id,
    content: last.before,
    steps: steps.slice(0, -1),
  };
  return { ...rest, ...last.before };
}

function stepsTo({ id, setups, leftOut }: InspectionRecord): readonly Step[] {
  const { inspection, content, steps } = history.value ?? {};
  const isThis = inspection === id && content?.setups === setups && content?.leftOut === leftOut;
  return isThis && steps !== undefined ? steps : [];
}

function contentOf({ setups, leftOut }: InspectionRecord): Content {
  return leftOut === undefined ? { setups } : { setups, leftOut };
}

/** Where the one text is that differs; undefined where more or something else does. */
function typedBetween(before: unknown, after: unknown): string | undefined {
  const [first, ...others] = differences(before, after, '');
  return others.length === 0 && first?.endsWith('/text') ? first : undefined;
}

function differences(one: unknown, other: unknown, at: string): readonly string[] {
  if (one === other) return [];
  if (!isObject(one) || !isObject(other)) return [at];
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].flatMap((key) => differences(one[key], other[key], `${at}/${key}`));
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
