import { type LinearForm, scaled, sum, unknown } from '../../part/linear-form';
import { solveByName } from './named-program';
import type { PlanRow } from './rows';

/** A part of a zone as it is, µm, and what cuts do to it. */
export interface CutPart {
  readonly value: number;
  readonly change: LinearForm;
}

/** A place of a face that its zone has to hold: a corner, or a point with form. */
export interface ZonePlace {
  /** Along each part of the zone from the middle, as a share of its length. */
  readonly shares: readonly number[];
  /** What stands out there beside the parts, µm. */
  readonly residual: number;
  /** For the doubt in how far it stands out, µm. */
  readonly guard: number;
}

/** Names of the heights that no place stands above or below. */
export interface Bounds {
  readonly highest: string;
  readonly lowest: string;
}

/** Every place, its guard included, lies between the two bounds. */
export function boundRows(
  parts: readonly CutPart[],
  places: readonly ZonePlace[],
  { highest, lowest }: Bounds,
): readonly PlanRow[] {
  return places.flatMap(({ shares, residual, guard }) => {
    const height = parts.reduce((total, { value }, k) => total + shares[k]! * value, residual);
    const change = sum(...parts.map((part, k) => scaled(part.change, shares[k]!)));
    return [
      { form: sum(change, scaled(unknown(highest), -1)), limit: -height - guard },
      { form: sum(scaled(change, -1), unknown(lowest)), limit: height - guard },
    ];
  });
}

/** The width that holds all places, their guards included, where the parts are these: µm. */
export function guardedWidth(parts: readonly number[], places: readonly ZonePlace[]): number {
  let highest = Number.NEGATIVE_INFINITY;
  let lowest = Number.POSITIVE_INFINITY;
  for (const { shares, residual, guard } of places) {
    const height = parts.reduce((total, part, k) => total + shares[k]! * part, residual);
    highest = Math.max(highest, height + guard);
    lowest = Math.min(lowest, height - guard);
  }
  return highest - lowest;
}

/** The width between two bounds. */
export function widthBetween({ highest, lowest }: Bounds): LinearForm {
  return new Map([
    [highest, 1],
    [lowest, -1],
  ]);
}

/** The least width, µm, guards included, that any parts whatever leave the zone of these places. */
export function leastWidth(places: readonly ZonePlace[]): number {
  const bounds: Bounds = { highest: 'highest', lowest: 'lowest' };
  const names = places[0]!.shares.map((_, k) => `part ${k}`);
  const parts = names.map((name) => ({ value: 0, change: unknown(name) }));
  const solution = solveByName({
    free: [...names, bounds.highest, bounds.lowest],
    positive: [],
    rows: boundRows(parts, places, bounds),
    seldom: [],
    objectives: [widthBetween(bounds)],
  });
  return solution!.get(bounds.highest)! - solution!.get(bounds.lowest)!;
}
