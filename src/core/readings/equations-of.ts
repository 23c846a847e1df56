import { type Block, depthBehind } from '../part/block';
import { outOfSquare, taper, thicknessDeparture } from '../part/face-errors';
import { axesInFace, type Face, faceTowards } from '../part/faces';
import { scaled, sum, unknown } from '../part/linear-form';
import { leverMovement } from '../statistics/lever-angle';
import { withinLimits } from './distributions';
import {
  heightDoubt,
  indicatorDoubt,
  leanWarmth,
  leverDoubt,
  micrometerDoubt,
  placeDoubt,
  sittingDoubt,
  thicknessWarmth,
} from './doubts';
import type { Equation } from './equation';
import { type Kit, kitFor } from './kit';
import type {
  ColumnReading,
  MicrometerReading,
  NoseComparatorReading,
  OverTheTopReading,
  ParallelAssumption,
  Reading,
} from './reading';
import { leanOf, sitOf, sitReading, zeroOfPlacing, zeroOfSetting } from './unknowns';

/**
 * Every reading as equations of the unknowns, with its doubt. The equations are of first order in
 * the slopes: exact to 1e-5 µm/mm at slopes of 0.1 µm/mm.
 */
export function equationsOf(
  readings: readonly Reading[],
  block: Block,
  kit: Kit,
): readonly Equation[] {
  return [
    ...readings.flatMap((reading) => equationsOfReading(reading, block, kitFor(reading, kit))),
    ...sitsOf(readings).map((sit) => sitEquation(sit, block, kit)),
  ];
}

function equationsOfReading(reading: Reading, block: Block, kit: Kit): readonly Equation[] {
  switch (reading.kind) {
    case 'nose comparator':
      return [noseComparator(reading, block, kit)];
    case 'column':
      return [column(reading, block, kit)];
    case 'micrometer':
      return [micrometer(reading, block, kit)];
    case 'over the top':
      return [overTheTop(reading, block, kit)];
    case 'face map':
      // Levelled on jacks it says nothing of the angles: zone forms take it up.
      return [];
    case 'assumed parallel':
      return assumedParallel(reading, block);
  }
}

/** r = zero + (h - h0)·e(face, base) */
function noseComparator(reading: NoseComparatorReading, block: Block, kit: Kit): Equation {
  const { id, setting, face, base, value } = reading;
  const reach = reading.indicatorHeight - reading.noseHeight;
  const lean = outOfSquare(face, base);
  const sitting = sittingDoubt(face, block, kit);
  return {
    reading: id,
    form: sum(unknown(zeroOfSetting(setting)), scaled(lean, reach)),
    value: leverMovement(value, kit.leverAngle),
    components: [
      ...indicatorDoubt(kit),
      ...sitting.map((component) => ({ ...component, standard: component.standard * reach })),
    ],
    shared: [
      heightDoubt(`nose of ${setting}`, scaled(lean, -1), kit),
      heightDoubt(`indicator of ${setting}`, lean, kit),
      ...leverDoubt(setting, value, kit),
      ...leanWarmth(face, base, reach, block, kit),
    ],
  };
}

/** r = zero(placing) + lean(column)·h + h·(e(face, base) + sit(placing)) */
function column(reading: ColumnReading, block: Block, kit: Kit): Equation {
  const { id, placing, face, base, height, value } = reading;
  const rise = sum(
    unknown(leanOf(reading.column)),
    unknown(sitOf(placing, face)),
    outOfSquare(face, base),
  );
  return {
    reading: id,
    form: sum(unknown(zeroOfPlacing(placing)), scaled(rise, height)),
    value: leverMovement(value, kit.leverAngle),
    components: indicatorDoubt(kit),
    shared: [
      heightDoubt(id, rise, kit),
      ...leverDoubt(reading.column, value, kit),
      ...leanWarmth(face, base, height, block, kit),
    ],
  };
}

/** t - nominal = d_f(p) + d_f'(p) */
function micrometer(reading: MicrometerReading, block: Block, kit: Kit): Equation {
  const { id, face, point, departure } = reading;
  return {
    reading: id,
    form: thicknessDeparture(face, point),
    value: departure,
    components: micrometerDoubt(kit),
    shared: [...placeDoubt(id, face, kit), ...thicknessWarmth(face, point, block, kit)],
  };
}

/** r = zero(placing) + d_f(p) + d_f'(p) + sit(placing)·p, the block standing on f' */
function overTheTop(reading: OverTheTopReading, block: Block, kit: Kit): Equation {
  const { id, placing, face, point, value } = reading;
  const sits = axesInFace(face).map((axis) =>
    scaled(unknown(sitOf(placing, faceTowards(axis, 1))), point[axis]),
  );
  return {
    reading: id,
    form: sum(unknown(zeroOfPlacing(placing)), thicknessDeparture(face, point), ...sits),
    value: leverMovement(value, kit.leverAngle),
    components: indicatorDoubt(kit),
    shared: [
      ...placeDoubt(id, face, kit),
      ...leverDoubt(placing, value, kit),
      ...thicknessWarmth(face, point, block, kit),
    ],
  };
}

/**
 * 0 = taper, along both directions of the face. A zone `within` wide lets each taper be anything
 * up to ±within over the length of the face.
 */
function assumedParallel(reading: ParallelAssumption, block: Block): readonly Equation[] {
  return axesInFace(reading.face).map((axis) => ({
    reading: reading.id,
    form: scaled(taper(reading.face, faceTowards(axis, 1)), block.size[axis]),
    value: 0,
    components: [{ cause: 'assumption', standard: withinLimits(reading.within) }],
    shared: [],
  }));
}

/** How the block sits at one placing, tilted towards one face. */
interface Sit {
  readonly placing: string;
  readonly towards: Face;
}

/** The sits that readings of one placing share, each once. */
function sitsOf(readings: readonly Reading[]): readonly Sit[] {
  const sits = new Map<string, Sit>();
  const add = (placing: string, towards: Face) =>
    sits.set(sitOf(placing, towards), { placing, towards });
  for (const reading of readings) {
    if (reading.kind === 'column') add(reading.placing, reading.face);
    if (reading.kind === 'over the top') {
      for (const axis of axesInFace(reading.face)) add(reading.placing, faceTowards(axis, 1));
    }
  }
  return [...sits.values()];
}

/** Seating and plate without any doubt would leave nothing to weigh by, µm. */
const HARDLY_ANY = 1e-4;

/** 0 = sit(placing): the block sits square on the plate as far as seating and plate allow. */
function sitEquation({ placing, towards }: Sit, block: Block, kit: Kit): Equation {
  const length = depthBehind(block, towards);
  const components = sittingDoubt(towards, block, kit).map((component) => ({
    ...component,
    standard: Math.max(HARDLY_ANY, component.standard * length),
  }));
  return {
    reading: sitReading(placing),
    form: scaled(unknown(sitOf(placing, towards)), length),
    value: 0,
    components,
    shared: [],
  };
}
