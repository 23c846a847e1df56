import { at, outline } from '../geometry';
import { Text } from '../text';
import type { CrossHair } from './cross-hair';
import type { HighMark } from './high-mark';
import type { Picture } from './picture';
import { lines } from './picture-faces';

/** What stands high, and where to press. */
export function PictureMarks({ picture }: { readonly picture: Picture }) {
  const { highs, crossHairs } = picture;
  return (
    <g>
      {highs.map((high) => (
        <High key={high.text} high={high} />
      ))}
      {crossHairs.map((cross, index) => (
        <Cross key={index} cross={cross} />
      ))}
    </g>
  );
}

function High({ high: { shape, inSight } }: { readonly high: HighMark }) {
  const [corner] = shape;
  if (shape.length > 1) {
    return (
      <path
        class={inSight ? 'turning-block-high' : 'turning-block-high-behind'}
        d={lines([shape])}
      />
    );
  }
  return corner ? (
    <circle
      class={inSight ? 'turning-block-corner' : 'turning-block-corner-behind'}
      cx={at(corner.x)}
      cy={at(corner.y)}
      r="8"
    />
  ) : null;
}

function Cross({ cross: { centre, ring, arms } }: { readonly cross: CrossHair }) {
  return (
    <g>
      <path class="turning-block-cross-margin" d={outline(ring) + lines(arms)} />
      <path class="turning-block-cross" d={outline(ring) + lines(arms)} />
      <circle class="drawing-contact-lit" cx={at(centre.x)} cy={at(centre.y)} r="4" />
    </g>
  );
}

/** The mark of the datum. */
export function PictureDatum({ picture: { datum } }: { readonly picture: Picture }) {
  if (datum === undefined) return null;
  const { triangle, leader, box, at: middle, letter } = datum;
  return (
    <g>
      <path class="turning-block-datum-margin" d={lines([leader])} />
      <path class="turning-block-datum-line" d={lines([leader])} />
      <path class="turning-block-datum-foot" d={outline(triangle)} />
      <path class="turning-block-datum-box" d={outline(box)} />
      <Text x={middle.x} y={middle.y} kind="drawing-strong">
        {letter}
      </Text>
    </g>
  );
}
