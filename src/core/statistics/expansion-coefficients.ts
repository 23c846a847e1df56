/** How a material grows with temperature, about room temperature. */
export interface Expansion {
  /** Linear coefficient, 10⁻⁶ per K. */
  readonly coefficient: number;
  /** The most that the coefficient of a piece may be off, either way, 10⁻⁶ per K. */
  readonly halfWidth: number;
  readonly source: keyof typeof EXPANSION_SOURCES;
}

/** Where the coefficients are from, and how they came here. */
export const EXPANSION_SOURCES = {
  callister: 'Callister, Materials Science and Engineering (2007), Table B.6; seen second-hand',
  tables: 'Engineering tables on the web',
  memory: 'Handbook values from memory, not checked',
} as const;

/** A coefficient out of a handbook is good to a tenth for the piece at hand. Common practice, no source. */
const HANDBOOK = 0.1;

function handbook(coefficient: number, source: keyof typeof EXPANSION_SOURCES): Expansion {
  return { coefficient, halfWidth: HANDBOOK * coefficient, source };
}

/** What parts, squares and plates are made of. */
export const EXPANSIONS = {
  'aluminium 2024': handbook(22.9, 'callister'),
  'aluminium 6061': handbook(23.6, 'callister'),
  'aluminium 7075': handbook(23.4, 'callister'),
  'cast aluminium 356': handbook(21.5, 'callister'),
  'mild steel 1020': handbook(11.7, 'callister'),
  'steel 1045': handbook(11.6, 'tables'),
  'alloy steel 4140': handbook(12.3, 'callister'),
  'tool steel A2': handbook(10.7, 'memory'),
  'tool steel D2': handbook(10.5, 'tables'),
  'tool steel O1': handbook(11.2, 'memory'),
  'stainless steel 304': handbook(17.2, 'callister'),
  'stainless steel 316': handbook(16, 'callister'),
  'stainless steel 416': handbook(9.9, 'memory'),
  'stainless steel 440C': handbook(10.1, 'tables'),
  'grey cast iron': handbook(11.4, 'callister'),
  'ductile iron': handbook(11.2, 'callister'),
  'brass C360': handbook(20.5, 'callister'),
  'bronze C932': handbook(18, 'callister'),
  'copper C110': handbook(17, 'callister'),
  // One table has 7.9; granites lie anywhere from about 4 to 9.
  granite: { coefficient: 6.5, halfWidth: 2.5, source: 'tables' },
} as const satisfies Readonly<Record<string, Expansion>>;

export type Material = keyof typeof EXPANSIONS;
