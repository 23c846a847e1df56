import { type Block, depthBehind } from '../../part/block';
import { AXES, axesInFace, type Face } from '../../part/faces';
import type { LinearForm } from '../../part/linear-form';
import type { Part } from '../../part/part';
import type { Aim } from './aim';
import type { GuardedCorner } from './guard';
import { type NamedProgram, solveByName } from './named-program';
import { NOTHING } from './rounding';
import { cornerRows, meanOf, type PlanRow, riseOf, sidesOf } from './rows';
import { shortfallOf } from './size-rows';
import type { Sizes } from './sizes';

/** What every plan for a part has to keep to, whatever faces it works. */
export interface PlanProblem {
  readonly part: Part;
  readonly level: number;
  readonly aims: readonly Aim[];
  readonly sizes: Sizes<GuardedCorner>;
  readonly sizeRows: readonly PlanRow[];
}

/** Values of the variables of a program, by name; 0 for one that is not there. */
export type PlanSolution = ReadonlyMap<string, number>;

/**
 * The removals with least volume that keep to all limits; undefined where there are none. Of several,
 * those that take no part of a zone beyond 0, and that turn the faces least.
 */
export function solvePlan(problem: PlanProblem, faces: readonly Face[]): PlanSolution | undefined {
  const { asIs } = aimsFor(problem, faces);
  if (asIs.some(({ excessAsIs }) => excessAsIs > NOTHING)) return undefined;
  return solveByName(programFor(problem, faces));
}

/**
 * The removals that come nearest to keeping to all limits: with the least sum of excess over
 * tolerance of the requirements, then the least sum of what sizes fall short by, then the least
 * volume. So sizes give way first, and requirements only where that does not do.
 */
export function solveNearest(problem: PlanProblem, faces: readonly Face[]): PlanSolution {
  const { positive, objectives, ...program } = programFor(problem, faces);
  const { touched, asIs } = aimsFor(problem, faces);
  const excess = touched.map(
    (aim) => [aim.excess, 1 / aim.measured.requirement.tolerance] as const,
  );
  const shortfall = AXES.map((axis) => [shortfallOf(axis), 1] as const);
  const giveWay = [...excess, ...shortfall].map(([name]) => name);
  const solution = solveByName({
    ...program,
    positive: [...positive, ...giveWay],
    objectives: [new Map(excess), new Map(shortfall), ...objectives],
  });
  return new Map([...solution!, ...asIs.map((aim) => [aim.excess, aim.excessAsIs] as const)]);
}

/** The requirements that `faces` have a part in, and those that are left as they are. */
function aimsFor({ aims }: PlanProblem, faces: readonly Face[]) {
  const isTouched = ({ measured: { requirement } }: Aim) =>
    faces.includes(requirement.face) || faces.includes(requirement.datum);
  return { touched: aims.filter(isTouched), asIs: aims.filter((aim) => !isTouched(aim)) };
}

function programFor(problem: PlanProblem, faces: readonly Face[]): NamedProgram {
  const { touched } = aimsFor(problem, faces);
  const { block } = problem.part;
  const rises = faces.flatMap((face) => sidesOf(face).map((side) => riseOf(face, side)));
  return {
    positive: [...faces.map(meanOf), ...rises, ...touched.map(({ overshoot }) => overshoot)],
    free: touched.flatMap(({ free }) => free),
    rows: [
      ...faces.flatMap((face) => cornerRows(face, block)),
      ...touched.flatMap(({ rows }) => rows),
      ...problem.sizeRows,
    ],
    seldom: touched.flatMap(({ seldom }) => seldom),
    objectives: [volumeOff(faces, block), overshootIn(touched), turnOf(faces, block)],
  };
}

/** Volume, mm³. */
function volumeOff(faces: readonly Face[], block: Block): LinearForm {
  return new Map(
    faces.map((face) => {
      const [u, v] = axesInFace(face);
      return [meanOf(face), (block.size[u] * block.size[v]) / 1000];
    }),
  );
}

/** Σ of overshoot over tolerance. */
function overshootIn(aims: readonly Aim[]): LinearForm {
  return new Map(
    aims.map(({ overshoot, measured }) => [overshoot, 1 / measured.requirement.tolerance]),
  );
}

/**
 * Σ of slopes, µm/mm. To lower one taper or the other takes the same stock, where their sum is all
 * that counts: the one along the longer side turns the face less.
 */
function turnOf(faces: readonly Face[], block: Block): LinearForm {
  return new Map(
    faces.flatMap((face) =>
      sidesOf(face).map((side) => [riseOf(face, side), 1 / depthBehind(block, side)] as const),
    ),
  );
}
