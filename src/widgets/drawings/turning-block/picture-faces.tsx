import { type Face, outwardNormal } from '../../../core/part/faces';
import { at, outline } from '../geometry';
import type { Shape } from './convex';
import type { Picture } from './picture';
import type { Wedge } from './wedge';

/** The metal, what comes off it, and the edges. */
export function PictureFaces({ picture }: { readonly picture: Picture }) {
  const { faces, wedges, square } = picture;
  const worked = wedges.filter(({ inSight }) => inSight);
  return (
    <g>
      {faces.map(({ face, shape, unknown }) => (
        <g key={face}>
          <path
            class={unknown ? 'turning-block-plain' : 'turning-block-metal'}
            d={outline(shape)}
          />
          <path class="turning-block-shade" d={outline(shape)} fill-opacity={shadeOf(face)} />
        </g>
      ))}
      <path class="turning-block-worked" d={worked.map(({ face }) => outline(face)).join('')} />
      <path class="turning-block-strokes" d={lines(worked.flatMap(({ strokes }) => strokes))} />
      {wedges.map((wedge, index) => (
        <WedgeSides key={index} wedge={wedge} />
      ))}
      <path class="turning-block-edges" d={faces.map(({ shape }) => outline(shape)).join('')} />
      <path class="turning-block-square" d={square.map(outline).join('')} />
      {wedges.map(({ face, inSight }, index) => (
        <path
          key={index}
          class={inSight ? 'turning-block-outline' : 'turning-block-outline-behind'}
          d={outline(face)}
        />
      ))}
    </g>
  );
}

function WedgeSides({ wedge: { sides, sideStrokes } }: { readonly wedge: Wedge }) {
  return (
    <g>
      <path class="turning-block-side" d={sides.map(outline).join('')} />
      <path class="turning-block-strokes" d={lines(sideStrokes)} />
    </g>
  );
}

/** Light from above: each pair of faces has its own shade, whichever way the block is turned. */
function shadeOf(face: Face): number {
  return { z: 0, y: 0.05, x: 0.12 }[outwardNormal(face).axis];
}

/** Lines through points as the `d` of a path. */
export function lines(shapes: readonly Shape[]): string {
  return shapes
    .map((shape) => `M${shape.map(({ x, y }) => `${at(x)} ${at(y)}`).join('L')}`)
    .join('');
}
