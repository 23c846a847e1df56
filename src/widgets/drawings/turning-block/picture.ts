import { once } from '../../../core/once';
import { squareOutlineOf } from './block-points';
import type { Shape } from './convex';
import { type CrossHair, crossHairs } from './cross-hair';
import { type DatumMark, datumMark } from './datum-mark';
import type { DrawnBlock } from './drawn-block';
import { type HighMark, highMark } from './high-mark';
import { type Room, roomAbout } from './room';
import { type Sheet, sheetFor } from './sheet';
import { type FaceInSight, faceInSight, type Stage, shapeIn, stageOf } from './stage';
import type { View } from './view';
import { type Wedge, wedgeIn } from './wedge';

/** All that is drawn of a block in one view. */
export interface Picture {
  readonly stage: Stage;
  readonly room: Room;
  readonly sheet: Sheet;
  readonly faces: readonly FaceInSight[];
  /** The faces in sight as they would be without their errors; none where there is no error. */
  readonly square: readonly Shape[];
  readonly wedges: readonly Wedge[];
  readonly highs: readonly HighMark[];
  readonly crossHairs: readonly CrossHair[];
  /** Room for it is looked for when it is first asked for. */
  readonly datum: DatumMark | undefined;
}

export function pictureOf(block: DrawnBlock, view: View): Picture {
  const stage = stageOf(block, sheetFor(block), view);
  const faces = stage.inSight.map((face) => faceInSight(stage, face));
  const marks = {
    wedges: block.removals.map((removal) => wedgeIn(stage, removal)),
    highs: block.removals.flatMap((removal) => highMark(stage, removal) ?? []),
    crossHairs: block.removals.flatMap((removal) => crossHairs(stage, removal)),
  };
  const room = roomAbout(stage, faces, marks);
  const { datum: shownDatum } = block.shown;
  const datum = once(() => shownDatum && datumMark(stage, shownDatum, room));
  return {
    ...{ stage, room },
    sheet: stage.sheet,
    faces,
    square: squareFaces(stage),
    ...marks,
    get datum() {
      return datum();
    },
  };
}

function squareFaces(stage: Stage): readonly Shape[] {
  const { block, inSight } = stage;
  return block.leans ? inSight.map((face) => shapeIn(stage, squareOutlineOf(block, face))) : [];
}
