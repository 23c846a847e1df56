import type { LinearProgram, ProgramRow } from '../../../../src/core/linear-program/program';

/*
 * AFIRO of the netlib collection (Gay, Electronic mail distribution of linear programming test
 * problems, COAL Newsletter 13, 1985), from public copies of the file: 27 rows, 32 variables. Rows
 * are its E and L; a row's limit is 0 where nothing is said.
 */
const EQUATIONS = 'R09 R10 R12 R13 R19 R20 R22 R23'.split(' ');
const LIMITS: Readonly<Record<string, number>> = {
  ...{ X50: 310, X51: 300, X05: 80, X17: 80, X27: 500, R23: 44, X40: 500 },
};

/** Variable: row and weight, row and weight, …; C is the cost. */
const COLUMNS = `
X01: X48 .301 R09 -1 R10 -1.06 X05 1
X02: X21 -1 R09 1 C -.4
X03: X46 -1 R09 1
X04: X50 1 R10 1
X06: X49 .301 R12 -1 R13 -1.06 X17 1
X07: X49 .313 R12 -1 R13 -1.06 X18 1
X08: X49 .313 R12 -1 R13 -.96 X19 1
X09: X49 .326 R12 -1 R13 -.86 X20 1
X10: X45 2.364 X17 -1
X11: X45 2.386 X18 -1
X12: X45 2.408 X19 -1
X13: X45 2.429 X20 -1
X14: X21 1.4 R12 1 C -.32
X15: X47 -1 R12 1
X16: X51 1 R13 1
X22: X46 .109 R19 -1 R20 -.43 X27 1
X23: X44 -1 R19 1 C -.6
X24: X48 -1 R19 1
X25: X45 -1 R19 1
X26: X50 1 R20 1
X28: X47 .109 R22 -.43 R23 1 X40 1
X29: X47 .108 R22 -.43 R23 1 X41 1
X30: X47 .108 R22 -.39 R23 1 X42 1
X31: X47 .107 R22 -.37 R23 1 X43 1
X32: X45 2.191 X40 -1
X33: X45 2.219 X41 -1
X34: X45 2.249 X42 -1
X35: X45 2.279 X43 -1
X36: X44 1.4 R23 -1 C -.48
X37: X49 -1 R23 1
X38: X51 1 R22 1
X39: R23 1 C 10`;

/** The optimal value as netlib gives it. */
export const AFIRO_VALUE = -464.75314286;

export const AFIRO: LinearProgram = programOf(
  COLUMNS.trim()
    .split('\n')
    .map((line) => {
      const entries = line.split(': ')[1]!.split(' ');
      return new Map(
        entries.flatMap((row, at) =>
          at % 2 === 0 ? [[row, Number(entries[at + 1])] as const] : [],
        ),
      );
    }),
);

function programOf(columns: readonly ReadonlyMap<string, number>[]): LinearProgram {
  const names = new Set(columns.flatMap((column) => [...column.keys()]));
  const weightsOf = (row: string) => columns.map((column) => column.get(row) ?? 0);
  const rows = [...names].filter((name) => name !== 'C');
  return {
    objectives: [weightsOf('C')],
    rows: rows.map(
      (name): ProgramRow => ({
        weights: weightsOf(name),
        sense: EQUATIONS.includes(name) ? '=' : '<=',
        limit: LIMITS[name] ?? 0,
      }),
    ),
  };
}
