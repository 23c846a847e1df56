import type { SetupEntry, SetupKind } from './setup-entry';

/** What a way of reading is for: of those for the same, one is enough. */
const FOR: Readonly<Record<SetupKind, 'angle' | 'thickness' | 'form'>> = {
  'nose comparator': 'angle',
  column: 'angle',
  micrometer: 'thickness',
  'over the top': 'thickness',
  'assumed parallel': 'thickness',
  'face map': 'form',
};

/**
 * The setups with `added`: empty ones that nobody has touched make way for those that are chosen
 * instead of them. `freshFor` makes a setup as it was when it was new: any other was touched.
 */
export function withWay(
  setups: readonly SetupEntry[],
  added: readonly SetupEntry[],
  freshFor: (setup: SetupEntry) => SetupEntry,
): readonly SetupEntry[] {
  const makesWay = (setup: SetupEntry) =>
    added.some((one) => isInsteadOf(one, setup)) &&
    withoutIds(setup) === withoutIds(freshFor(setup));
  const first = setups.findIndex(makesWay);
  const at = first < 0 ? setups.length : first;
  return [
    ...setups.slice(0, at),
    ...added,
    ...setups.slice(at).filter((setup) => !makesWay(setup)),
  ];
}

function isInsteadOf(one: SetupEntry, other: SetupEntry): boolean {
  return (
    FOR[one.kind] === FOR[other.kind] &&
    one.faces.includes(other.faces[0]) &&
    baseOf(one) === baseOf(other)
  );
}

/** What the pair stands on, where the way of reading knows; a map is of its first face alone. */
function baseOf(setup: SetupEntry): string | undefined {
  if (setup.kind === 'face map') return setup.faces[0];
  return 'base' in setup ? setup.base : undefined;
}

/** All that a setup says but for its ids. Rows that are alike count once: how many stand empty says nothing. */
function withoutIds(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? '';
  if (Array.isArray(value)) return `[${[...new Set(value.map(withoutIds))].join()}]`;
  const named = Object.entries(value).filter(([key]) => key !== 'id');
  // Readings of a column go by the ids of its heights.
  const said = named.map(([key, one]) => [key, key === 'readings' ? Object.values(one) : one]);
  return `{${said.map(([key, one]) => `${key}:${withoutIds(one)}`).join()}}`;
}
