import { AXES } from '../../core/part/faces';
import { LENGTH_UNITS } from '../../core/units/length';
import { WORK_METHODS } from '../records';
import { byKind, fields, flag, forEach, list, moment, named, number, oneOf, text } from './checks';
import { drawerItem, face, kitEntry, methodLimits, partEntry } from './entries';
import { setups } from './setups';

/*
 * What the app goes by in each record of today's format, as `store/records.ts` has them:
 * tests/store/whole.test.ts holds it against the shapes that files are looked over with.
 */

const base = { made: moment, changed: moment };
const at = fields({ at: moment });

const found = fields(
  {
    ...{ value: number, expanded: number, probability: number },
    verdict: oneOf(['in', 'out', 'too close to call']),
  },
  { withForm: fields({ width: number, low: number, high: number }) },
);

const entered = {
  part: fields(
    { ...base, id: text, entry: partEntry, example: flag },
    {
      ...{ archived: at, removed: at },
      closed: fields({ at: moment, inspection: text }, { who: text }),
    },
  ),
  inspection: fields(
    { ...base, id: text, part: text, setups },
    {
      ...{ leftOut: named(fields({ at: moment, why: text })), dismissed: list(text) },
      closed: fields(
        { at: moment, part: partEntry, kit: kitEntry },
        {
          ...{ level: text, who: text, method: number },
          said: list(fields({ requirement: text }, { found })),
        },
      ),
    },
  ),
  work: fields(
    {
      ...{ ...base, id: text, part: text, after: text, face, method: oneOf(WORK_METHODS) },
      ...{ abrasive: text, note: text },
      amount: fields({ text, unit: oneOf(['seconds', 'strokes']) }),
      advised: fields({ mean: number, slopes: fields({}, forEach(AXES, number)) }),
    },
    { notLearned: at },
  ),
  shop: fields(
    {
      ...{ ...base, kit: kitEntry, level: text },
      units: fields({
        size: oneOf(['mm', 'in']),
        deviation: oneOf(LENGTH_UNITS.filter((unit) => unit !== 'in')),
      }),
    },
    {
      ...{ who: text, kitName: text, share: text, methodLimits },
      ...{ otherKits: list(fields({ name: text, kit: kitEntry })), drawer: list(drawerItem) },
      ...{ learnedSince: named(moment), setAnew: named(list(moment)) },
    },
  ),
};

const standing = fields(
  { probabilities: list(number), notFixed: number },
  { read: moment, kit: number },
);

const foundMark = fields({ at: moment, method: number }, { kit: number });

/** Whether a record of today's format has all that the app goes by in it, however deep. */
export const isWhole = byKind({
  ...entered,
  version: fields({ ...base, of: text, id: text, why: text, record: byKind(entered) }),
  summary: fields({ ...base, part: text }, { standing, found: foundMark }),
});
