import { gzipSync } from 'node:zlib';
import fc, { type Arbitrary } from 'fast-check';
import { endLine, headLine } from '../../../src/exchange/backup/format';
import { shopRecords } from '../../exchange/support/shops';

const HEAD = { made: '2024-03-05T14:07:00.000Z', app: '0.1.0' };

/** What stands where something else belongs. */
const STRANGE: Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(
    ...[null, true, -1, 1e308, '', '=HYPERLINK("x")', '<script>1</script>', '../..', '__proto__'],
    ...[[], {}, [[[]]], { toString: 1 }, { constructor: { prototype: { hit: 1 } } }],
    'x'.repeat(100_000),
    JSON.parse('{"__proto__":{"hit":1}}'),
    JSON.parse(`${'['.repeat(2000)}${']'.repeat(2000)}`),
  ),
  fc.jsonValue({ maxDepth: 3 }),
);

/** What is done to one record: a field of it, however deep, becomes strange, goes, or comes twice. */
const change = fc.record({
  way: fc.array(fc.nat({ max: 30 }), { minLength: 1, maxLength: 5 }),
  what: fc.constantFrom('replace', 'remove', 'add', 'rename'),
  strange: STRANGE,
});

type Change = typeof change extends Arbitrary<infer T> ? T : never;

/** `value` with the change made at the end of its way: each step is the number of an entry. */
function changed(value: unknown, { way, what, strange }: Change): unknown {
  const [step = 0, ...further] = way;
  if (typeof value !== 'object' || value === null) return strange;
  const entries = Object.entries(value);
  const index = entries.length === 0 ? 0 : step % entries.length;
  const [name = 'x', inner] = entries[index] ?? [];
  if (further.length > 0 && typeof inner === 'object' && inner !== null) {
    entries[index] = [name, changed(inner, { way: further, what, strange })];
  } else if (what === 'remove') entries.splice(index, 1);
  else if (what === 'rename') entries[index] = [`${name}x`, inner];
  else if (what === 'add') entries.push(['__proto__', strange], ['strange', strange]);
  else entries[index] = [name, strange];
  if (Array.isArray(value)) return entries.map(([, one]) => one);
  // Names like __proto__ are to be own ones, as JSON.parse makes them.
  const pairs = entries.map(
    ([key, one]) => `${JSON.stringify(key)}:${JSON.stringify(one) ?? 'null'}`,
  );
  return JSON.parse(`{${pairs.join()}}`);
}

/** Mostly `usual`: what is wrong everywhere at once is found out at the first look. */
function seldom<T>(value: Arbitrary<T>, usual: T): Arbitrary<T> {
  return fc.oneof({ weight: 9, arbitrary: fc.constant(usual) }, { weight: 1, arbitrary: value });
}

/** What is done to the bytes of the whole file. */
const harm = fc.record({
  cut: seldom<number | null>(fc.double({ min: 0, max: 1, noNaN: true }), null),
  flip: seldom<number | null>(fc.double({ min: 0, max: 0.999, noNaN: true }), null),
  packed: fc.boolean(),
  count: seldom<number>(fc.constantFrom(1, -1), 0),
  tail: seldom<string>(fc.constantFrom('\n', 'x', '{"a":1}\n'), ''),
});

/** Backups with something wrong in them, and now and then nothing. */
export const damagedBackups: Arbitrary<Blob> = fc
  .tuple(shopRecords, fc.array(change, { maxLength: 4 }), harm)
  .map(([records, changes, { cut, flip, packed, count, tail }]) => {
    const some: unknown[] = [...records];
    for (const one of changes) {
      const index = (one.way[0] ?? 0) % Math.max(1, some.length);
      some[index] = changed(some[index], one);
    }
    const lines = some.map((record) => JSON.stringify(record) ?? 'undefined');
    const body = lines.length === 0 ? '' : `${lines.join(',\n')}\n`;
    const text = headLine(HEAD) + body + endLine(lines.length + count) + tail;
    const bytes = packed ? gzipSync(text) : Buffer.from(text);
    if (flip !== null) bytes[Math.floor(flip * bytes.length)]! ^= 0x41;
    return new Blob([new Uint8Array(cut === null ? bytes : bytes.subarray(0, cut * bytes.length))]);
  });
