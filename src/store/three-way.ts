/*
 * Puts two changed states of a value together, piece by piece: a piece is a field, or an item of a
 * list that can be told by its id.
 */

/** Two states of one value and what both were made from, undefined where it was not there or is not known. */
export interface States {
  readonly from: unknown;
  /** The state that has its way where both changed the same piece. */
  readonly first: unknown;
  readonly second: unknown;
}

export interface Together {
  readonly value: unknown;
  /** True where a piece of the second state had to give way. */
  readonly clashed: boolean;
}

/** Fields that make an object mean something only as a whole: a number without its own unit is wrong. */
const WHOLE = ['unit', 'at', 'mean'];

/** What the rest of an object is about: a reading that was typed for one face is none of another. */
const SUBJECT = ['face', 'faces', 'base', 'datum', 'kind', 'kitName'];

/** Neither state loses a piece that it added or changed, but for those that both changed. What one took away stays where the other changed it. */
export function putTogether({ from, first, second }: States): Together {
  if (isSame(first, second) || isSame(from, second)) return { value: first, clashed: false };
  if (isSame(from, first)) return { value: second, clashed: false };
  if (first === undefined) return { value: second, clashed: false };
  if (second === undefined) return { value: first, clashed: false };
  if (hasFields(first) && hasFields(second) && isAboutTheSame(first, second)) {
    return fieldsTogether(hasFields(from) ? from : {}, first, second);
  }
  const items = [first, second].map(itemsOf);
  const [ofFirst, ofSecond] = items;
  if (ofFirst !== undefined && ofSecond !== undefined) {
    return listsTogether(itemsOf(from) ?? new Map(), ofFirst, ofSecond);
  }
  return { value: first, clashed: true };
}

/** Whether two values are the same all through. A field that is undefined is as none. */
export function isSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) {
    return false;
  }
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const [fields, others] = [one as Fields, other as Fields];
  return namesIn(fields, others).every((name) => isSame(fields[name], others[name]));
}

type Fields = Readonly<Record<string, unknown>>;

function hasFields(value: unknown): value is Fields {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
  return !WHOLE.some((name) => Object.hasOwn(value, name));
}

function isAboutTheSame(first: Fields, second: Fields): boolean {
  return SUBJECT.every((name) => isSame(first[name], second[name]));
}

function namesIn(...objects: readonly Fields[]): readonly string[] {
  return [...new Set(objects.flatMap((object) => Object.keys(object)))];
}

function fieldsTogether(from: Fields, first: Fields, second: Fields): Together {
  const fields = namesIn(first, second).map((name) => {
    const states = { from: from[name], first: first[name], second: second[name] };
    return [name, putTogether(states)] as const;
  });
  return {
    value: Object.fromEntries(
      fields.flatMap(([name, { value }]) => (value === undefined ? [] : [[name, value]])),
    ),
    clashed: fields.some(([, { clashed }]) => clashed),
  };
}

/** Items of a list by what tells each from the others. */
type Items = ReadonlyMap<unknown, unknown>;

/** None where the value is no list, or its items cannot be told apart. */
function itemsOf(value: unknown): Items | undefined {
  if (!Array.isArray(value)) return undefined;
  const items = new Map(value.map((item: unknown) => [nameOf(item), item]));
  return items.size === value.length && !items.has(undefined) ? items : undefined;
}

/** An item is told by its id, else by its name, else, where it is no object, by itself. */
function nameOf(item: unknown): unknown {
  if (typeof item !== 'object' || item === null) return item;
  const { id, name } = item as Fields;
  return id ?? name;
}

function listsTogether(from: Items, first: Items, second: Items): Together {
  let clashed = false;
  const value = orderOf(first, second).flatMap((name) => {
    const states = { from: from.get(name), first: first.get(name), second: second.get(name) };
    const item = putTogether(states);
    clashed ||= item.clashed;
    return item.value === undefined ? [] : [item.value];
  });
  return { value, clashed };
}

/** The items of the first list in their order, each that only the second has after the one that it follows there. */
function orderOf(first: Items, second: Items): readonly unknown[] {
  const order = [...first.keys()];
  let before = -1;
  for (const name of second.keys()) {
    const place = order.indexOf(name);
    if (place === -1) order.splice(before + 1, 0, name);
    before = place === -1 ? before + 1 : place;
  }
  return order;
}
