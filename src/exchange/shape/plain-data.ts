/*
 * What comes from a file is data and nothing else, and not more of it than a record can need. This
 * is looked at before anything else is made of it.
 */

/** Characters that one text may have, entries that one list or object, and levels one within the other. */
const MOST = { characters: 20_000, entries: 10_000, levels: 12, values: 200_000 } as const;

/** What is wrong with a value that was read from a file, in plain words; undefined where nothing is. */
export function notPlain(value: unknown): string | undefined {
  let values = 0;
  const look = (one: unknown, level: number): string | undefined => {
    values += 1;
    if (values > MOST.values) return 'It holds more than any record does';
    if (level > MOST.levels) return 'It is nested deeper than any record is';
    if (typeof one === 'string' && one.length > MOST.characters) {
      return `A text in it is longer than ${MOST.characters} characters`;
    }
    if (typeof one === 'number' && !Number.isFinite(one)) return 'A number in it is not finite';
    if (typeof one !== 'object' || one === null) return undefined;
    const names = Object.keys(one);
    if (names.length > MOST.entries) return 'A list in it is longer than any record has';
    for (const name of names) {
      if (isTaken(name)) return `The name ‘${name}’ is not allowed`;
      const wrong = look((one as Readonly<Record<string, unknown>>)[name], level + 1);
      if (wrong !== undefined) return wrong;
    }
    return undefined;
  };
  return look(value, 0);
}

/** True for names that every object answers to, such as `constructor`: to look one up finds what nobody put there. */
export function isTaken(name: string): boolean {
  return name in Object.prototype;
}
