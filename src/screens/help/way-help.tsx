import { BlockOnPlate } from '../../widgets/drawings/block-on-plate';
import { FourCorners } from '../../widgets/drawings/help/four-corners';
import { OverAFace } from '../../widgets/drawings/help/over-a-face';
import { ParallelOrNot } from '../../widgets/drawings/help/parallel-or-not';
import { ThicknessAtTwoHeights } from '../../widgets/drawings/help/thickness-at-two-heights';
import { Reversal } from '../../widgets/drawings/reversal';
import { rounded } from '../../words/numbers';
import type { HelpTopic } from './topics';

const BLOCK = {
  ...{ width: 60, height: 90, leftName: 'left', rightName: 'right' },
  ...{ baseName: 'bottom', topName: 'top', leans: { right: 0.08, left: -0.08 } },
} as const;

const micrometres = (value: number) => `${rounded(value, 0)} µm`;

type WayTopic = Extract<
  HelpTopic,
  | 'nose comparator'
  | 'four sides'
  | 'column'
  | 'micrometer'
  | 'over the top'
  | 'face map'
  | 'assumed parallel'
>;

/** What a way of reading is, and what it can tell. */
export function WayHelp({ topic }: { readonly topic: WayTopic }) {
  switch (topic) {
    case 'nose comparator':
      return (
        <>
          <BlockOnPlate
            {...BLOCK}
            instrument={{
              ...{ kind: 'nose comparator', side: 'right', noseHeight: 6, indicatorHeights: [80] },
            }}
            label="A stand whose nose touches the side near the plate, with an indicator higher up on the same side."
          />
          <p>
            A stand with a fixed nose near the plate and an indicator above it. Push the nose
            against the side and read: what it shows is its own zero and what the side leans between
            the two heights.
          </p>
          <Reversal
            first={41}
            second={29}
            firstName="right"
            secondName="left"
            inWords={micrometres}
          />
          <p>
            Read the opposite side with nothing touched: where both are parallel the one leans out
            what the other leans in, so that the mean of the two is the zero. No square is needed.
          </p>
        </>
      );
    case 'four sides':
      return (
        <>
          <FourCorners />
          <p>
            The four corners of a section sum to 360°, whatever the block is like. Read all four
            with one setting or under one column, and its zero or its lean and every corner fall
            out, with no word on whether sides are parallel.
          </p>
        </>
      );
    case 'column':
      return (
        <>
          <BlockOnPlate
            {...BLOCK}
            instrument={{
              ...{ kind: 'column', side: 'right', indicatorHeights: [10, 45, 80], active: 2 },
            }}
            label="A column with an indicator that slides up the side of the block."
          />
          <p>
            The indicator slides up a column and reads the side at two heights or more. The column
            leans a little itself: turned round, the other side has the same lean of the column in
            it, so that it falls out. From three heights on the form of the side shows too.
          </p>
        </>
      );
    case 'micrometer':
      return (
        <>
          <ThicknessAtTwoHeights />
          <p>
            The thickness at two heights tells whether opposite sides are parallel, and so how the
            error shares out between them. It sees nothing of how both lean together.
          </p>
        </>
      );
    case 'over the top':
      return (
        <>
          <OverAFace on="plate" />
          <p>
            The block stands on the opposite face, so that the indicator reads the thickness from
            place to place: parallelism, but not the size itself. Form of the lower face is in it.
          </p>
        </>
      );
    case 'face map':
      return (
        <>
          <OverAFace on="jacks" />
          <p>
            Three jacks under the part let you level the face, until three far corners read alike.
            What is left is its form: how flat it is, and nothing of its angles or of the face
            below.
          </p>
        </>
      );
    case 'assumed parallel':
      return (
        <>
          <ParallelOrNot />
          <p>
            Both of these differ alike from side to side, but one has two sides out and the other
            only one. Two readings cannot tell them apart: you say here that the sides are parallel.
            Where they are not, the wrong side is blamed: a micrometer at two heights settles it.
          </p>
        </>
      );
  }
}
