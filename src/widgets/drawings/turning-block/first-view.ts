import type { Face } from '../../../core/part/faces';
import type { DrawnBlock } from './drawn-block';
import { BELOW, eyeOf, facing, STANDING, type View } from './view';

/** Seen squarely enough; more tells no more, and hides what lies beside it. */
const ENOUGH = 0.5;

/** Degrees between the views that are tried. */
const STEP = 15;

/** The view to begin with: the faces to work in sight, then their high sides, the front if it may be. */
export function firstView(block: DrawnBlock): View {
  if (block.removals.length === 0) return STANDING;
  let [best, bestScore] = [STANDING, scoreOf(block, STANDING)];
  for (const tilt of [STANDING.tilt, BELOW]) {
    for (let turn = STANDING.turn; turn < STANDING.turn + 360; turn += STEP) {
      const view = { turn: turn % 360, tilt };
      const score = scoreOf(block, view);
      if (score > bestScore + 1e-9) [best, bestScore] = [view, score];
    }
  }
  return best;
}

function scoreOf(block: DrawnBlock, view: View): number {
  const eye = eyeOf(view);
  const seen = (face: Face) => Math.min(ENOUGH, Math.max(0, facing(block, face, eye)));
  const work = block.removals.reduce((score, { shown }) => {
    const high = shown.highSide.reduce((sum, side) => sum + seen(side), 0);
    return score + 10 * seen(shown.face) + 2 * high;
  }, 0);
  return work + seen('front') + 0.5 * seen('right');
}
