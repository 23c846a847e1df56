/**
 * What two readings of one setting say, on opposite faces of a block that are parallel: what one face
 * leans out the other leans in, so that the comparator's own zero is their mean, and half their
 * difference what the first face leans out between nose and indicator. All in the readings' unit.
 * The simplest case of the adjustment, for showing how it comes about.
 */
export function reversal(first: number, second: number) {
  return { zero: (first + second) / 2, lean: (first - second) / 2 };
}
