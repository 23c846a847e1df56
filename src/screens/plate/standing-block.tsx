import type { SidesAnswer } from '../../core/inspection/sides';
import { depthBehind } from '../../core/part/block';
import { type Face, oppositeFace, outwardNormal } from '../../core/part/faces';
import type { Part } from '../../core/part/part';
import { millimetresForDrawing } from '../../entry/for-drawing';
import type { TypedLength } from '../../entry/typed-length';
import { BlockOnPlate } from '../../widgets/drawings/block-on-plate';
import { seenFrom } from '../../widgets/drawings/face-view';
import { leanInWords } from '../../words/leans';
import { middleOf, nearest, TapToGo, type TapToGoProps } from './tap-to-go';

interface StandingBlockProps {
  readonly part: Part;
  readonly faces: readonly [Face, Face];
  readonly base: Face;
  readonly sides: SidesAnswer | undefined;
  readonly instrument?: {
    readonly kind: 'nose comparator' | 'column';
    /** The face that is being read. */
    readonly face: Face;
    readonly nose?: TypedLength;
    readonly heights: readonly TypedLength[];
    /** Which of the heights is being read. */
    readonly active: number;
    /** Told which face was tapped, and the nearest of the heights. */
    readonly onPick: (face: Face, row: number) => void;
  };
}

/** The block on the plate with its two faces, as far as it is known how they lean, and the instrument. */
export function StandingBlock({ part, faces, base, sides, instrument }: StandingBlockProps) {
  const right = outwardNormal(faces[0]).sign === 1 ? faces[0] : faces[1];
  const left = oppositeFace(right);
  const view = seenFrom(right, base);
  const leanOf = (face: Face) => sides?.outOfSquare[sides.faces.indexOf(face)];
  const [rightLean, leftLean] = [leanOf(right), leanOf(left)];
  const nose = instrument?.nose && millimetresForDrawing(instrument.nose);
  // A height that is no number yet is not drawn; the others keep their place.
  const heights = (instrument?.heights ?? []).flatMap((height, row) => {
    const millimetres = millimetresForDrawing(height);
    return millimetres === undefined ? [] : [{ row, millimetres, text: height.text.trim() }];
  });
  const sentences = [right, left].flatMap((face) => {
    const lean = leanOf(face);
    return lean === undefined ? [] : [leanInWords(face, base, lean)];
  });
  const pick: TapToGoProps['onTap'] = ({ x, y }, drawing) => {
    const metal = drawing.querySelector('.drawing-metal');
    if (metal === null) return;
    const contacts = [...drawing.querySelectorAll('.drawing-contact')];
    const row = nearest(contacts, (contact) => Math.abs(contact.y - y));
    instrument?.onPick(x > middleOf(metal).x ? right : left, heights[row ?? -1]?.row ?? 0);
  };
  const block = (
    <BlockOnPlate
      width={depthBehind(part.block, right)}
      height={depthBehind(part.block, base)}
      leftName={left}
      rightName={right}
      baseName={base}
      topName={oppositeFace(base)}
      {...(rightLean !== undefined &&
        leftLean !== undefined && { leans: { right: rightLean.value, left: leftLean.value } })}
      {...(instrument !== undefined && {
        instrument: {
          kind: instrument.kind,
          side: instrument.face === right ? ('right' as const) : ('left' as const),
          ...(nose !== undefined && { noseHeight: nose }),
          indicatorHeights: heights.map(({ millimetres }) => millimetres),
          active: heights.findIndex(({ row }) => row === instrument.active),
        },
      })}
      {...(nose !== undefined && { noseLabel: instrument?.nose?.text.trim() ?? '' })}
      indicatorLabels={heights.map(({ text }) => text)}
      seenFrom={view === 'front' ? undefined : view}
      label={[`The block on the plate, seen from the ${view}.`, ...sentences].join(' ')}
    />
  );
  return instrument === undefined ? block : <TapToGo onTap={pick}>{block}</TapToGo>;
}
