import { alongFromBase, type Block } from '../part/block';
import { type Axis, areNeighbours, type Face, outwardNormal } from '../part/faces';
import type { Reading } from '../readings/reading';

/** A place where a reading touches a face, and how material there moves the reading. */
export interface Touch {
  /** mm along the axis asked for, from the centre of the block. */
  readonly at: number;
  /** + where more material reads more. */
  readonly sign: 1 | -1;
}

/**
 * Where `reading` touches `face` and would see it change along an axis of it; nowhere where it does
 * not, or reads it along the other axis only.
 */
export function touchesOf(
  reading: Reading,
  face: Face,
  along: Axis,
  block: Block,
): readonly Touch[] {
  switch (reading.kind) {
    case 'column':
    case 'nose comparator': {
      const { base } = reading;
      if (reading.face !== face || outwardNormal(base).axis !== along) return [];
      const touch = (height: number, sign: 1 | -1): Touch => ({
        at: alongFromBase(block, base, height),
        sign,
      });
      return reading.kind === 'column'
        ? [touch(reading.height, 1)]
        : [touch(reading.indicatorHeight, 1), touch(reading.noseHeight, -1)];
    }
    case 'micrometer':
      return areNeighbours(reading.face, face) ? [] : [{ at: reading.point[along], sign: 1 }];
    case 'over the top':
      return reading.face === face ? [{ at: reading.point[along], sign: 1 }] : [];
    // Levelled on jacks a face says nothing of the others; a word is no touch.
    case 'face map':
    case 'assumed parallel':
      return [];
  }
}
