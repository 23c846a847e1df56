import fc from 'fast-check';
import { beforeEach, expect, it } from 'vitest';
import { readLineages } from '../../src/store/in-bulk';
import { emptyDatabase, putAnything } from './support/database';

beforeEach(emptyDatabase);

/* Ids in which one begins as another, and signs that sort before and after the slash. */
const id = fc.constantFrom('a', 'a-', 'a-b', 'ab', 'b', 'B', '_', '0', 'z');
const key = fc.oneof(
  fc.constant('shop'),
  id.map((part) => `part/${part}`),
  fc
    .tuple(id, fc.constantFrom('inspection', 'work'), id)
    .map((names) => `chain/${names.join('/')}`),
);
const state = fc.constantFrom('2024-03-05T14:07:00.000Z', '2024-03-05T14:07:00.000Z 1f');

it('what lies under some keys, and its earlier states, is found as if each were asked for by itself', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.uniqueArray(key, { maxLength: 30 }),
      fc.array(fc.tuple(key, state), { maxLength: 30 }),
      fc.uniqueArray(key, { maxLength: 6 }),
      async (current, versions, asked) => {
        await emptyDatabase();
        const earlier = new Set(versions.map(([of, id]) => `version/${of}/${id}`));
        for (const at of [...current, ...earlier]) await putAnything(at, { at });
        expect(await readLineages(asked)).toEqual(
          asked.map((key) => ({
            key,
            current: current.includes(key) ? { at: key } : undefined,
            versions: [...earlier]
              .filter((at) => at.startsWith(`version/${key}/`))
              .sort()
              .map((at) => ({ at })),
          })),
        );
      },
    ),
    { numRuns: 150 },
  );
});
