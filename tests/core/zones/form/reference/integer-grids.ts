/** A face read on a grid: deviations in µm by rows, row j at v = j·pitch, column i at u = i·pitch. */
export interface Grid {
  readonly name: string;
  readonly rows: readonly (readonly number[])[];
  /** mm. */
  readonly pitch: number;
  /** Least-squares range, µm. */
  readonly leastSquares: number;
  readonly minimumZone: number;
  /** Slopes of the minimum zone, µm/mm, where no other plane has its width. */
  readonly slopes?: { readonly u: number; readonly v: number };
  /** All points that touch the zone, as i + columns·j, where no other plane has its width. */
  readonly touching?: { readonly upper: readonly number[]; readonly lower: readonly number[] };
}

/** None of these is published: they were derived in exact rational arithmetic with a certificate. */
export const INTEGER_GRIDS: readonly Grid[] = [
  {
    name: 'a bowl: four corners above, the middle below',
    rows: [
      [2, 1, 2],
      [1, 0, 1],
      [2, 1, 2],
    ],
    pitch: 50,
    leastSquares: 2,
    minimumZone: 2,
    slopes: { u: 0, v: 0 },
    touching: { upper: [0, 2, 6, 8], lower: [4] },
  },
  {
    name: 'a saddle: two opposite corners above, the others below',
    rows: [
      [1, 0, -1],
      [0, 0, 0],
      [-1, 0, 1],
    ],
    pitch: 50,
    leastSquares: 2,
    minimumZone: 2,
    slopes: { u: 0, v: 0 },
    touching: { upper: [0, 8], lower: [2, 6] },
  },
  {
    name: 'a ridge: many sets of contacts hold it as well',
    rows: [
      [0, 6, 0],
      [0, 6, 0],
      [0, 6, 0],
    ],
    pitch: 40,
    leastSquares: 6,
    minimumZone: 6,
    slopes: { u: 0, v: 0 },
    touching: { upper: [1, 4, 7], lower: [0, 2, 3, 5, 6, 8] },
  },
  {
    name: 'a flat that is tilted',
    rows: [
      [0, 2, 4, 6],
      [5, 7, 9, 11],
      [10, 12, 14, 16],
    ],
    pitch: 25,
    leastSquares: 0,
    minimumZone: 0,
    slopes: { u: 2 / 25, v: 1 / 5 },
  },
  {
    name: 'one point above held between two below on one line',
    rows: [
      [0, 4, 6],
      [-5, 20, -9],
      [-10, -3, 8],
    ],
    pitch: 100,
    leastSquares: 97 / 3,
    minimumZone: 27,
  },
  {
    name: 'two above across two below',
    rows: [
      [0, 3, 1, -2, 4],
      [2, -1, 5, 0, 1],
      [-3, 4, 2, 6, -1],
      [1, 0, -4, 3, 2],
    ],
    pitch: 30,
    leastSquares: 1891 / 200,
    minimumZone: 26 / 3,
    slopes: { u: 1 / 30, v: -1 / 90 },
    touching: { upper: [11, 13], lower: [3, 17] },
  },
];
