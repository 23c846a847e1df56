import { probabilityWithForm, seedOf } from '../verdict/monte-carlo';
import type { FormPoint } from '../zones/zone-with-form';
import { formRead } from './form-read';
import { isBySeating, type Seatings, seatingsToSettle, type ToSettle } from './seatings';

/** The same where the readings show form. */
export interface ToSettleWithForm extends ToSettle {
  readonly points: readonly FormPoint[];
}

/**
 * `seatingsToSettle` with the form in the zone. With each seating its points are read again: n times
 * more leave their doubt smaller by √(n + 1), as that of the plane. All are tried with the same random
 * numbers, so that only the doubt differs. Some 100 ms to seconds: not for a keystroke.
 */
export function seatingsToSettleWithForm(asked: ToSettleWithForm): Seatings {
  const { requirement, zone, block, readings, kit, points } = asked;
  const seed = seedOf({ ...zone, points });
  const again = new Set(
    formRead(requirement, readings.filter(isBySeating), block, kit).map(({ group }) => group),
  );
  return seatingsToSettle(asked, (then, times) =>
    probabilityWithForm({
      ...then,
      points: points.map((point) => (again.has(point.group) ? readAgain(point, times) : point)),
      tolerance: requirement.tolerance,
      seed,
    }),
  );
}

function readAgain(point: FormPoint, times: number): FormPoint {
  return { ...point, standard: point.standard / Math.sqrt(times + 1) };
}
