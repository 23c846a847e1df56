/** The folder of the site that the app is served from, with a slash at both ends. */
const BASE = import.meta.env.BASE_URL;

/** A file of the build, not a screen. */
export const LICENCES = `${BASE}licences.txt`;

/** Names what to take off on the plate screen. */
export const TAKE_OFF = 'take-off';

/** Patterns of the router. */
export const ROUTES = {
  bench: BASE,
  kit: `${BASE}kit`,
  drawer: `${BASE}drawer`,
  rates: `${BASE}rates`,
  files: `${BASE}files`,
  comparators: `${BASE}comparators`,
  part: `${BASE}part/:part`,
  drawing: `${BASE}part/:part/drawing`,
  plate: `${BASE}part/:part/readings/:inspection`,
  record: `${BASE}part/:part/record/:inspection`,
  table: `${BASE}part/:part/table`,
  work: `${BASE}part/:part/work/:work`,
  compare: `${BASE}part/:part/compare`,
} as const;

/** Addresses of the screens. */
export const to = {
  bench: () => BASE,
  /** `from` is the address to go back to, of the kit and of what lies behind it. */
  kit: (from?: string) => withFrom(ROUTES.kit, from),
  drawer: (from?: string) => withFrom(ROUTES.drawer, from),
  rates: (from?: string) => withFrom(ROUTES.rates, from),
  comparators: (from?: string) => withFrom(ROUTES.comparators, from),
  files: () => ROUTES.files,
  part: (part: string) => `${BASE}part/${part}`,
  drawing: (part: string) => `${BASE}part/${part}/drawing`,
  plate: (part: string, inspection: string) => `${BASE}part/${part}/readings/${inspection}`,
  /** What to take off, by these readings. */
  takeOff: (part: string, inspection: string) => `${to.plate(part, inspection)}#${TAKE_OFF}`,
  table: (part: string) => `${BASE}part/${part}/table`,
  record: (part: string, inspection: string) => `${BASE}part/${part}/record/${inspection}`,
  work: (part: string, work: string) => `${BASE}part/${part}/work/${work}`,
  /** Two states of inspections, by their keys; left out, the screen takes the last two. */
  compare: (part: string, one?: string, other?: string) => {
    const chosen =
      one === undefined || other === undefined ? '' : `?${new URLSearchParams({ one, other })}`;
    return `${BASE}part/${part}/compare${chosen}`;
  },
} as const;

function withFrom(screen: string, from: string | undefined): string {
  return from === undefined ? screen : `${screen}?from=${encodeURIComponent(from)}`;
}
