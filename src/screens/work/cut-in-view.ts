import type { PlanStep } from '../../core/correction/plan/plan';
import type { CornerRemoval } from '../../core/correction/removal';
import { type Block, depthBehind } from '../../core/part/block';
import type { Face } from '../../core/part/faces';
import { type Direction, faceView } from '../../widgets/drawings/face-view';

const EDGES = ['top', 'bottom', 'left', 'right'] as const;
type Edge = (typeof EDGES)[number];

/** The cut as it lies before the hand: the worked face on the paper, seen from above through the part. */
export function cutInView(step: PlanStep, block: Block) {
  const { through } = faceView(step.face);
  const { edges } = through;
  const edgeOf = (face: Face) => EDGES.filter((edge) => edges[edge] === face);
  const along = ({ axis, sign }: Direction) => sign * (step.pressPoint[axis] ?? 0);
  const corner = (one: Edge, other: Edge): CornerRemoval => {
    const towards = [edges[one], edges[other]];
    const found = step.corners.find((each) => each.towards.every((face) => towards.includes(face)));
    if (found === undefined) throw new Error(`The ${step.face} has no ${one} ${other} corner`);
    return found;
  };
  const corners = {
    topLeft: corner('top', 'left'),
    topRight: corner('top', 'right'),
    bottomLeft: corner('bottom', 'left'),
    bottomRight: corner('bottom', 'right'),
  };
  const share = ({ removal }: CornerRemoval) => removal / step.wedge;
  return {
    edges,
    corners,
    extent: { across: depthBehind(block, edges.right), up: depthBehind(block, edges.top) },
    press: { across: along(through.right), up: along(through.up) },
    shares: {
      topLeft: share(corners.topLeft),
      topRight: share(corners.topRight),
      bottomLeft: share(corners.bottomLeft),
      bottomRight: share(corners.bottomRight),
    },
    highEdges: step.highSide.flatMap(edgeOf),
    /** Text for the distance of the press point from each high edge. */
    distances: (text: (millimetres: number) => string): Partial<Record<Edge, string>> =>
      Object.fromEntries(
        step.pressDistances.flatMap(({ from, distance }) =>
          edgeOf(from).map((edge) => [edge, text(distance)]),
        ),
      ),
  };
}
