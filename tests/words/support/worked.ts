import type { CorrectionOption } from '../../../src/core/correction/options';
import { inspect } from '../../../src/core/inspection/inspect';
import type { Face } from '../../../src/core/part/faces';
import type { Part } from '../../../src/core/part/part';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';

/**
 * A block 60 × 40 × 90 on its bottom, faces assumed parallel: the comparator with its nose at 6 and
 * indicator at 80 shows 34 µm on the right and 31 on the left. Right is obtuse by
 * 3/148 = 0.02027 µm/mm, over its height of 90 by 1.824 µm.
 */
const PART: Part = {
  block: { size: { x: 60, y: 40, z: 90 } },
  datum: 'bottom',
  requirements: [
    { id: 'r', face: 'right', datum: 'bottom', tolerance: 5 },
    { id: 'l', face: 'left', datum: 'bottom', tolerance: 5 },
  ],
  finished: [],
};

const nose = (face: Face, value: number): Reading => ({
  kind: 'nose comparator',
  id: face,
  setting: 'setting',
  face,
  base: 'bottom',
  noseHeight: 6,
  indicatorHeight: 80,
  value,
});

const READINGS: readonly Reading[] = [
  nose('right', 34),
  nose('left', 31),
  { kind: 'assumed parallel', id: 'word', face: 'right', within: 1 },
];

/** The way to put right to bottom right by working `face`. */
export function optionOn(face: 'bottom' | 'right'): CorrectionOption {
  const { corrections } = inspect(PART, READINGS, DEFAULT_KIT, 0.95);
  return corrections[0]!.find((option) => option.face === face)!;
}
