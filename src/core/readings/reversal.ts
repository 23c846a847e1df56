/**
 * What two readings of one setting say, on opposite faces of a block that are parallel: what one face
 * leans out the other leans in, so that the comparator's own zero is their mean, and half their
 * difference what the first face leans out between nose and indicator. All in the readings' unit.
 * The simplest case of the adjustment, for showing how it comes about.
 */
export function reversal(first: number, second: number) {
  return { zero: (first + second) / 2, lean: (first - second) / 2 };
}

/** Half the finest step of an indicator, µm: what differs by less is the same. */
const SAME = 0.05;

/** True where the `zero` that the adjustment finds is the mean of the two readings, µm: the faces are as good as parallel. */
export function isTheirMean(zero: number, first: number, second: number): boolean {
  return Math.abs(zero - reversal(first, second).zero) < SAME;
}
