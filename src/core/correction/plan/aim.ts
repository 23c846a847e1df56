import type { Block } from '../../part/block';
import { scaled, sum, unknown } from '../../part/linear-form';
import { zoneForms } from '../../zones/requirement-forms';
import {
  type Bounds,
  boundRows,
  type CutPart,
  guardedWidth,
  leastWidth,
  widthBetween,
  type ZonePlace,
} from './form-rows';
import { guardFactor, standardOf } from './guard';
import type { AimedWidth, MeasuredRequirement } from './plan';
import { changeByCuts, type PlanRow } from './rows';

/** How sure a plan is to be, and how much of each tolerance it may use. */
export interface Demand {
  /** Probability that each width and size is no worse than planned, above 0.5 and below 1. */
  readonly level: number;
  /** Share of the tolerance that width and guard together may take up: above 0, up to 1. */
  readonly share: number;
}

/** What one requirement asks of the cuts. */
export interface Aim extends AimedWidth {
  readonly measured: MeasuredRequirement;
  /** What its zone has to hold: the corners of the face, and the points with form. */
  readonly places: readonly ZonePlace[];
  readonly rows: readonly PlanRow[];
  /** Rows that few plans come near to. */
  readonly seldom: readonly PlanRow[];
  /** Variables that the rows bring with them: free, µm. */
  readonly free: readonly string[];
  /** The variable that lets the rows give way, 0 or more, µm. */
  readonly excess: string;
  /** Its value where neither of the two faces is worked. */
  readonly excessAsIs: number;
  /** The variable, 0 or more, that says how far a part is taken beyond 0, µm. */
  readonly overshoot: string;
}

/**
 * What `measured` asks of the cuts: its width, and a guard for its doubt, are to come to no more
 * than the share of the tolerance; where doubt or form leave no room for that, the width is to be
 * as small as it can be.
 *
 * The guard is that of the width at the signs that its parts may come to have: the two rows of
 * squareness have one, each of the four of parallelism its own. Form stays as it is: a cut takes
 * off a plane.
 */
export function aimOf(measured: MeasuredRequirement, block: Block, demand: Demand): Aim {
  const { requirement, zone, formPoints } = measured;
  const allowed = demand.share * requirement.tolerance;
  const places = placesOf(measured, demand.level);
  const forms = zoneForms(requirement, block);
  const parts = zone.parts.map(({ value }, k) => ({
    value,
    change: changeByCuts(forms[k]!, block),
  }));
  const excess = `excess of ${requirement.id}`;
  const asks =
    formPoints.length === 0
      ? askedOfPlane(parts, places, allowed, excess)
      : askedWithForm(parts, places, allowed, excess, requirement.id);
  const overshoot = `overshoot of ${requirement.id}`;
  const rows = [...asks.rows, ...overshootRows(parts, overshoot)];
  return { measured, allowed, places, excess, overshoot, ...asks, rows };
}

type Asked = Pick<Aim, 'rows' | 'seldom' | 'free' | 'excessAsIs' | 'doubtAlone' | 'formAlone'>;

/**
 * Of two parts one may be brought down for the other, through 0 and beyond, with no more stock:
 * these rows tell.
 */
function overshootRows(parts: readonly CutPart[], overshoot: string): readonly PlanRow[] {
  if (parts.length === 1) return [];
  return parts.map(({ value, change }) => ({
    form: sum(scaled(change, value < 0 ? 1 : -1), scaled(unknown(overshoot), -1)),
    limit: Math.abs(value),
  }));
}

/** One row for each two corners across from each other, whichever is the higher. */
function askedOfPlane(
  parts: readonly CutPart[],
  corners: readonly ZonePlace[],
  allowed: number,
  excess: string,
): Asked {
  const rows = corners.map(({ shares, guard }): PlanRow => {
    const width = parts.reduce((total, { value }, k) => total + 2 * shares[k]! * value, 0);
    const change = sum(...parts.map((part, k) => scaled(part.change, 2 * shares[k]!)));
    return {
      form: sum(change, scaled(unknown(excess), -1)),
      limit: Math.max(0, allowed - 2 * guard) - width,
    };
  });
  const doubtAlone = corners.some(({ guard }) => 2 * guard > allowed);
  const excessAsIs = Math.max(0, ...rows.map(({ limit }) => -limit));
  return { rows, seldom: [], free: [], excessAsIs, doubtAlone, formAlone: false };
}

function askedWithForm(
  parts: readonly CutPart[],
  places: readonly ZonePlace[],
  allowed: number,
  excess: string,
  id: string,
): Asked {
  const bounds: Bounds = { highest: `highest of ${id}`, lowest: `lowest of ${id}` };
  const least = leastWidth(places);
  const unguarded = places.map((place) => ({ ...place, guard: 0 }));
  const formAlone = least > allowed && leastWidth(unguarded) > allowed;
  const limit = Math.max(allowed, least);
  const form = sum(widthBetween(bounds), scaled(unknown(excess), -1));
  const corners = 2 ** parts.length;
  const values = parts.map(({ value }) => value);
  return {
    rows: [...boundRows(parts, places.slice(0, corners), bounds), { form, limit }],
    seldom: boundRows(parts, places.slice(corners), bounds),
    excessAsIs: Math.max(0, guardedWidth(values, places) - limit),
    free: [bounds.highest, bounds.lowest],
    doubtAlone: least > allowed && !formAlone,
    formAlone,
  };
}

/**
 * The corners first, then the points. Each has the guard for its own doubt: at a corner it is half
 * that of the width.
 */
function placesOf({ zone, formPoints }: MeasuredRequirement, level: number): readonly ZonePlace[] {
  const factor = guardFactor(level, zone.degreesOfFreedom);
  const corners = cornerSharesOf(zone.parts.length).map((shares) => ({
    shares,
    residual: 0,
    standard: 0,
  }));
  return [...corners, ...formPoints].map(({ shares, residual, standard }) => ({
    shares,
    residual,
    guard: factor * standardOf(zone, shares, standard),
  }));
}

/** The ends of one part, or the corners of two. */
function cornerSharesOf(parts: number): readonly (readonly number[])[] {
  const ends = [0.5, -0.5];
  if (parts === 1) return ends.map((end) => [end]);
  return ends.flatMap((first) => ends.map((second) => [first, second]));
}
