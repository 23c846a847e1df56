import * as v from 'valibot';
import { upgrade } from '../../store/upgrades';
import { notPlain } from './plain-data';
import { type KeptRecord, keptRecord } from './records';

/** A value from a file as a record, or what is wrong with it in plain words. */
export type Checked =
  | { readonly ok: true; readonly record: KeptRecord }
  | { readonly ok: false; readonly message: string };

/**
 * Looks a value from a file over as strictly as can be: it is a record of today's format in every
 * field, after the upgrades from an older one, or it is refused.
 */
export function checkRecord(value: unknown): Checked {
  const wrong = notPlain(value);
  if (wrong !== undefined) return { ok: false, message: wrong };
  const upgraded = upgrade(value);
  if (!upgraded.ok) {
    const message =
      upgraded.reason === 'newer'
        ? 'It is from a newer version of Highedge: update the app first'
        : 'It is no record of Highedge, or it is damaged';
    return { ok: false, message };
  }
  const parsed = v.safeParse(keptRecord, upgraded.record, { abortEarly: true });
  if (parsed.success) return { ok: true, record: parsed.output as KeptRecord };
  return { ok: false, message: inWords(parsed.issues[0]) };
}

/** 'setups › 2 › faces: The two faces …', lists counted from 1. */
function inWords(issue: v.BaseIssue<unknown>): string {
  const { kind, expected, received, message, path } = deepest(issue);
  const names = (path ?? []).map(({ key }) => (typeof key === 'number' ? key + 1 : String(key)));
  const what =
    kind !== 'schema'
      ? message
      : expected === 'never'
        ? 'there is no such field'
        : `expected ${expected ?? 'nothing'}, found ${short(received)}`;
  return names.length === 0 ? what : `${names.join(' › ')}: ${what}`;
}

/** Of a choice of shapes, the issue with the one that the value came nearest to. */
function deepest(issue: v.BaseIssue<unknown>): v.BaseIssue<unknown> {
  const all = (issue.issues ?? []) as readonly v.BaseIssue<unknown>[];
  const [first, ...others] = all;
  if (first === undefined) return issue;
  const depth = (one: v.BaseIssue<unknown>) => one.path?.length ?? 0;
  const best = others.reduce((one, other) => (depth(other) > depth(one) ? other : one), first);
  const inner = deepest(best);
  return { ...inner, path: [...(issue.path ?? []), ...(inner.path ?? [])] as never };
}

function short(received: string): string {
  return received.length > 60 ? `${received.slice(0, 60)}…` : received;
}
