import { useMemo } from 'preact/hooks';
import { InTurns } from '../../in-turns';
import { Drawing } from '../drawing';
import { drawnBlock } from './drawn-block';
import { firstView } from './first-view';
import { Key } from './key';
import { pictureOf } from './picture';
import { PictureFaces } from './picture-faces';
import { PictureDatum, PictureMarks } from './picture-marks';
import { PictureTexts } from './picture-texts';
import type { ShownBlock } from './shown-block';
import { TurnButtons } from './turn-buttons';
import { TurnHandle } from './turn-handle';
import { useTurning } from './use-turning';
import './turning-block.css';

interface TurningBlockProps {
  readonly block: ShownBlock;
  /** Sentence that says what is to be seen: which face is worked, what comes off where. */
  readonly label: string;
}

/**
 * The block in space with its errors enlarged and what is to come off it; a finger turns it.
 *
 * On the drawing itself a finger that goes up or down scrolls the page, as everywhere else; one that
 * sets out sideways turns the block, and then tilts it too. The handle in the corner takes every
 * drag. A mouse turns and tilts on both.
 */
export function TurningBlock({ block, label }: TurningBlockProps) {
  const drawn = useMemo(() => drawnBlock(block), [block]);
  const first = useMemo(() => firstView(drawn), [drawn]);
  const { view, drag, moveBy, glideOn } = useTurning(first);
  const picture = useMemo(() => pictureOf(drawn, view), [drawn, view]);
  return (
    <div class="turning-block">
      <div class="turning-block-place">
        <div class="turning-block-drawing" {...drag}>
          <Drawing height={picture.sheet.height} label={label}>
            {/* To find room for the datum and the texts takes its time. */}
            <InTurns>
              <PictureFaces picture={picture} />
              <PictureMarks picture={picture} />
              <PictureDatum picture={picture} />
              <PictureTexts picture={picture} />
            </InTurns>
          </Drawing>
        </div>
        <TurnHandle view={view} picture={picture} drag={drag} moveBy={moveBy} />
      </div>
      <Key block={drawn} />
      <TurnButtons glideOn={glideOn} />
    </div>
  );
}
