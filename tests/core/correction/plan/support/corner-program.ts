import type { MeasuredRequirement } from '../../../../../src/core/correction/plan/plan';
import type { LinearProgram, ProgramRow } from '../../../../../src/core/linear-program/program';
import type { Triple } from '../../../../../src/core/part/block';
import { AXES, type Axis, type Face } from '../../../../../src/core/part/faces';
import { studentQuantile } from '../../../../../src/core/statistics/student';
import { minimiseByHighs } from '../../../linear-program/support/highs';
import { NORMALS } from '../../../support/exact-block';
import type { Problem } from './problems';

/*
 * The plan as a program for HiGHS, written apart from the core: the variables are the removals at
 * the four corners of each face, which lie in a plane; every width is held place by place, each
 * pair of places by itself.
 */

/** Removals at the corners of a face: both coordinates low, first high, both high, second high. */
const CORNERS = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;

/** A sum of corner removals (by face and corner) and of what gives way, by name. */
type Sum = Map<string, number>;

function nameOf(face: Face, corner: number): string {
  return `${face} ${corner}`;
}

function axesIn(face: Face): readonly Axis[] {
  return AXES.filter((_, index) => NORMALS[face][index] === 0);
}

function signAlong(face: Face, axis: Axis): number {
  return NORMALS[face][AXES.indexOf(axis)]!;
}

function add(to: Sum, from: Sum, factor: number): void {
  for (const [name, weight] of from) to.set(name, (to.get(name) ?? 0) + factor * weight);
}

/** How much steeper the removal from `face` gets per mm along `axis`, µm/mm. */
function slope(face: Face, axis: Axis, size: Triple): Sum {
  const which = axesIn(face).indexOf(axis);
  return new Map(
    CORNERS.map((signs, corner) => [nameOf(face, corner), signs[which]! / (2 * size[axis])]),
  );
}

/**
 * What removals add to each part of the zone: the material at the far edge goes, so that the angle
 * gets smaller by the slope of the removal going away from the other face.
 */
function changesOf({ requirement }: MeasuredRequirement, size: Triple): readonly Sum[] {
  const { face, datum } = requirement;
  const across = axesIn(face).filter((axis) => signAlong(datum, axis) !== 0);
  if (across.length === 0) {
    return axesIn(face).map((axis) => {
      const change: Sum = new Map();
      add(change, slope(face, axis, size), -size[axis]);
      add(change, slope(datum, axis, size), -size[axis]);
      return change;
    });
  }
  const length = size[across[0]!];
  const change: Sum = new Map();
  for (const [one, other] of [
    [face, datum],
    [datum, face],
  ] as const) {
    const axis = axesIn(one).find((along) => signAlong(other, along) !== 0)!;
    add(change, slope(one, axis, size), signAlong(other, axis) * length);
  }
  return [change];
}

/** A sum that is to be no more than `limit`. */
interface AtMost {
  readonly sum: Sum;
  readonly limit: number;
}

interface Place {
  readonly shares: readonly number[];
  readonly residual: number;
  readonly guard: number;
}

function placesOf(measured: MeasuredRequirement, level: number): readonly Place[] {
  const { parts, covariance, degreesOfFreedom } = measured.zone;
  const corners = parts.length === 1 ? [[-0.5], [0.5]] : CORNERS.map(([u, v]) => [u / 2, v / 2]);
  const bare = corners.map((shares) => ({ shares, residual: 0, standard: 0 }));
  const factor = studentQuantile(level, degreesOfFreedom);
  return [...bare, ...measured.formPoints].map(({ shares, residual, standard }) => {
    let variance = standard ** 2;
    shares.forEach((one, i) => {
      shares.forEach((other, j) => {
        const both = i === j ? parts[i]!.standard ** 2 : covariance;
        variance += one * other * both;
      });
    });
    return { shares, residual, guard: factor * Math.sqrt(Math.max(0, variance)) };
  });
}

/** Over each pair of places: how far the first stands out of the second, with both guards. */
function pairsOf(places: readonly Place[]) {
  return places.flatMap((high) =>
    places.map((low) => ({
      shares: high.shares.map((share, k) => share - low.shares[k]!),
      least: high.residual - low.residual + high.guard + low.guard,
    })),
  );
}

/** The least width with guards that any parts leave, by HiGHS. */
function leastWidth(places: readonly Place[]): number {
  const count = places[0]!.shares.length;
  const rows = pairsOf(places).map(({ shares, least }): ProgramRow => {
    return { weights: [...shares, -1], sense: '<=', limit: -least };
  });
  const objectives = [[...Array.from({ length: count }, () => 0), 1]];
  return minimiseByHighs({ objectives, rows, free: objectives[0]!.map(() => true) }).value;
}

function widthRows(measured: MeasuredRequirement, { part, demand }: Problem): readonly AtMost[] {
  const { requirement, zone, formPoints } = measured;
  const allowed = demand.share * requirement.tolerance;
  const places = placesOf(measured, demand.level);
  const changes = changesOf(measured, part.block.size);
  const limit = formPoints.length === 0 ? allowed : Math.max(allowed, leastWidth(places));
  // Of a plane only corners across from each other count: the width is that of one of these pairs.
  const pairs = pairsOf(places).filter(
    ({ shares }) => formPoints.length > 0 || shares.every((share) => Math.abs(share) === 1),
  );
  return pairs.map(({ shares, least }) => {
    const sum: Sum = new Map([[requirement.id, -1]]);
    let now = 0;
    shares.forEach((share, k) => {
      now += share * zone.parts[k]!.value;
      add(sum, changes[k]!, share);
    });
    // Without form, a guard that leaves no room asks for nothing but the least width.
    const room = formPoints.length === 0 ? Math.max(0, limit - least) : limit - least;
    return { sum, limit: room - now };
  });
}

function sizeRows({ part, sizes, demand }: Problem): readonly AtMost[] {
  return AXES.flatMap((axis) => {
    const lower = part.sizeLimits?.[axis]?.lower;
    if (lower === undefined) return [];
    return (sizes[axis] ?? []).map(({ towards, departure, standard, degreesOfFreedom }) => {
      const sum: Sum = new Map([[axis, -1]]);
      for (const face of ['right', 'left', 'back', 'front', 'top', 'bottom'] as const) {
        if (signAlong(face, axis) === 0) continue;
        // The corner of that face which touches the same two neighbours.
        const corner = CORNERS.findIndex((signs) =>
          axesIn(face).every((along, which) => {
            const neighbour = towards.find((one) => signAlong(one, along) !== 0)!;
            return signAlong(neighbour, along) === signs[which];
          }),
        );
        sum.set(nameOf(face, corner), 1);
      }
      const guard = studentQuantile(demand.level, degreesOfFreedom) * standard;
      return { sum, limit: departure - guard - lower };
    });
  });
}

/** The program for the plan on `faces`; with `giveWay` its limits do. */
export function cornerProgram(
  problem: Problem,
  faces: readonly Face[],
  giveWay: boolean,
): LinearProgram {
  const { part, measured } = problem;
  const { size } = part.block;
  const own = faces.flatMap((face) => CORNERS.map((_, corner) => nameOf(face, corner)));
  const ids = measured.map(({ requirement }) => requirement.id);
  const names = giveWay ? [...own, ...ids, ...AXES] : own;
  const dense = (sum: Sum) => names.map((name) => sum.get(name) ?? 0);
  const limits = [...measured.flatMap((one) => widthRows(one, problem)), ...sizeRows(problem)];
  const plane = faces.map((face): ProgramRow => {
    const weights = dense(new Map([1, -1, 1, -1].map((sign, at) => [nameOf(face, at), sign])));
    return { weights, sense: '=', limit: 0 };
  });
  const rows = limits.map(({ sum, limit }): ProgramRow => {
    return { weights: dense(sum), sense: '<=', limit };
  });
  const volume: Sum = new Map(
    faces.flatMap((face) =>
      CORNERS.map((_, corner) => {
        const [u, v] = axesIn(face);
        return [nameOf(face, corner), (size[u!] * size[v!]) / 4000] as const;
      }),
    ),
  );
  const excess: Sum = new Map(
    measured.map(({ requirement: { id, tolerance } }) => [id, 1 / tolerance]),
  );
  const shortfall: Sum = new Map(AXES.map((axis) => [axis, 1]));
  const objectives = giveWay ? [excess, shortfall, volume] : [volume];
  return { objectives: objectives.map(dense), rows: [...plane, ...rows] };
}

/** The least values of the objectives by HiGHS, one after the other; undefined where the rows contradict each other. */
export function valuesByHighs({ objectives, rows }: LinearProgram): readonly number[] | undefined {
  const values: number[] = [];
  const held = [...rows];
  for (const costs of objectives) {
    const { status, value } = minimiseByHighs({ objectives: [costs], rows: held });
    if (status === 'infeasible') return undefined;
    if (status !== 'optimal') throw new Error(`HiGHS: ${status}`);
    values.push(value);
    held.push({ weights: costs, sense: '<=', limit: value + 1e-9 });
  }
  return values;
}
