import { corners, layOut, onFace, yOf } from './block-layout';
import { Drawing } from './drawing';
import { FaceNames } from './face-names';
import { at, DRAWING_WIDTH, outline } from './geometry';
import { HeightRule } from './height-rule';
import { activeHeight, type DrawnInstrument, Instrument } from './instrument';
import { factorInWords, type Leans } from './leans';
import { PLATE_DEPTH, Plate } from './plate';
import { Text } from './text';

interface BlockOnPlateProps {
  /** mm between the two faces at the left and right of the drawing. */
  readonly width: number;
  /** mm above the base. */
  readonly height: number;
  readonly leftName: string;
  readonly rightName: string;
  readonly baseName: string;
  readonly topName: string;
  /** µm/mm; drawn square where left out or 0. */
  readonly leans?: Leans;
  readonly instrument?: DrawnInstrument;
  /** Text at the height of the nose. */
  readonly noseLabel?: string;
  /** Text at each height of the indicator, in their order. */
  readonly indicatorLabels?: readonly (string | undefined)[];
  /** The face that one looks at, where it is not the front. */
  readonly seenFrom?: string | undefined;
  readonly label?: string;
}

/** The block seen square-on as it stands on the plate, with how its faces lean and what reads them. */
export function BlockOnPlate(props: BlockOnPlateProps) {
  const {
    width,
    height,
    leans,
    instrument,
    noseLabel,
    indicatorLabels = [],
    seenFrom,
    label,
  } = props;
  const labelled = labelledHeights(instrument, noseLabel, indicatorLabels);
  const layout = layOut({
    width,
    height,
    leans,
    tool: instrument?.side,
    readings: (instrument?.readings ?? []).flatMap((text) => text ?? []),
    heights: labelled.map(({ text }) => text),
  });
  const marks = labelled.map((mark) => ({ ...mark, y: yOf(layout, mark.height) }));
  const { left, right, top, plate, leans: drawn } = layout;
  const ring = instrument && activeHeight(instrument);
  const caption = plate + PLATE_DEPTH + 15;
  const captions = [
    seenFrom && `seen from the ${seenFrom}`,
    drawn.factor && `leans drawn × ${factorInWords(drawn.factor)}`,
  ].filter(Boolean);
  return (
    <Drawing height={captions.length > 0 ? caption + 12 : plate + PLATE_DEPTH + 4} label={label}>
      <Plate from={4} to={DRAWING_WIDTH - 4} y={plate} />
      <path class="drawing-metal" d={outline(corners(layout))} />
      {drawn.left !== 0 && <path class="drawing-square" d={`M${at(left)} ${plate}V${top}`} />}
      {drawn.right !== 0 && <path class="drawing-square" d={`M${at(right)} ${plate}V${top}`} />}
      {instrument && (
        <HeightRule
          x={layout.rule}
          zero={plate}
          marks={marks.map(({ y, text }) => ({ text, from: onFace(layout, instrument.side, y) }))}
        />
      )}
      <FaceNames
        layout={layout}
        lines={marks.map(({ y }) => y)}
        ring={ring === undefined ? undefined : yOf(layout, ring)}
        names={props}
      />
      {instrument && <Instrument layout={layout} instrument={instrument} />}
      {captions.length > 0 && (
        <Text x={DRAWING_WIDTH / 2} y={caption} kind="drawing-soft">
          {captions.join(' · ')}
        </Text>
      )}
    </Drawing>
  );
}

/** The heights that have a text. */
function labelledHeights(
  instrument: DrawnInstrument | undefined,
  noseLabel: string | undefined,
  indicatorLabels: readonly (string | undefined)[],
): { height: number; text: string }[] {
  const { noseHeight, indicatorHeights = [] } = instrument ?? {};
  return [
    { height: noseHeight, text: noseLabel },
    ...indicatorHeights.map((height, index) => ({ height, text: indicatorLabels[index] })),
  ].flatMap(({ height, text }) =>
    height === undefined || text === undefined || text === '' ? [] : [{ height, text }],
  );
}
