import { type Block, depthBehind } from '../part/block';
import { outOfSquare, taper, thicknessDeparture } from '../part/face-errors';
import { axesInFace, type Face, faceTowards } from '../part/faces';
import { scaled, sum, unknown } from '../part/linear-form';
import { fromResolution, withinLimits } from './distributions';
import type { Component, Equation } from './equation';
import type { Kit } from './kit';
import type {
  ColumnReading,
  MicrometerReading,
  NoseComparatorReading,
  ParallelAssumption,
  Reading,
} from './reading';
import { leanOf, sitOf, zeroOf } from './unknowns';

/**
 * Every reading as equations of the unknowns, with its doubt. The equations are of first order in
 * the slopes: exact to 1e-5 µm/mm at slopes of 0.1 µm/mm.
 */
export function equationsOf(
  readings: readonly Reading[],
  block: Block,
  kit: Kit,
): readonly Equation[] {
  const placings = new Map<string, ColumnReading>();
  for (const reading of readings) {
    if (reading.kind === 'column') placings.set(reading.placing, reading);
  }
  return [
    ...readings.flatMap((reading) => equationsOfReading(reading, block, kit)),
    ...[...placings.values()].map((reading) => sitOfPlacing(reading, block, kit)),
  ];
}

function equationsOfReading(reading: Reading, block: Block, kit: Kit): readonly Equation[] {
  switch (reading.kind) {
    case 'nose comparator':
      return [noseComparator(reading, block, kit)];
    case 'column':
      return [column(reading, kit)];
    case 'micrometer':
      return [micrometer(reading, kit)];
    case 'assumed parallel':
      return assumedParallel(reading, block);
  }
}

/** r = zero + (h - h0)·e(face, base) */
function noseComparator(reading: NoseComparatorReading, block: Block, kit: Kit): Equation {
  const reach = reading.indicatorHeight - reading.noseHeight;
  const lean = outOfSquare(reading.face, reading.base);
  const sits = sitting(reading.face, block, kit);
  return {
    reading: reading.id,
    form: sum(unknown(zeroOf(reading.setting)), scaled(lean, reach)),
    value: reading.value,
    components: [
      ...indicator(kit),
      ...sits.map(({ cause, standard }) => ({ cause, standard: standard * reach })),
    ],
    height: { setting: reading.setting, rate: lean, standard: kit.heightSetting },
  };
}

/** r = zero(placing) + lean(column)·h + h·(e(face, base) + sit(placing)) */
function column(reading: ColumnReading, kit: Kit): Equation {
  const rise = sum(
    unknown(leanOf(reading.column)),
    unknown(sitOf(reading.placing)),
    outOfSquare(reading.face, reading.base),
  );
  return {
    reading: reading.id,
    form: sum(unknown(zeroOf(reading.placing)), scaled(rise, reading.height)),
    value: reading.value,
    components: indicator(kit),
    height: { setting: reading.id, rate: rise, standard: kit.heightSetting },
  };
}

/** t - nominal = d_f(p) + d_f'(p) */
function micrometer(reading: MicrometerReading, kit: Kit): Equation {
  const upwards = axesInFace(reading.face).map((axis) => taper(reading.face, faceTowards(axis, 1)));
  return {
    reading: reading.id,
    form: thicknessDeparture(reading.face, reading.point),
    value: reading.departure,
    components: [
      { cause: 'micrometer resolution', standard: fromResolution(kit.micrometerResolution) },
      { cause: 'micrometer error', standard: withinLimits(kit.micrometerError) },
    ],
    height: { setting: reading.id, rate: sum(...upwards), standard: kit.heightSetting },
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
  }));
}

/** 0 = sit(placing): the block sits square on the plate as far as seating and plate allow. */
function sitOfPlacing(reading: ColumnReading, block: Block, kit: Kit): Equation {
  const length = depthBehind(block, reading.face);
  return {
    reading: reading.placing,
    form: scaled(unknown(sitOf(reading.placing)), length),
    value: 0,
    components: sitting(reading.face, block, kit).map(({ cause, standard }) => ({
      cause,
      standard: standard * length,
    })),
  };
}

/** How the block may sit tilted towards `face`: standard uncertainties in µm per mm of height. */
function sitting(face: Face, block: Block, kit: Kit): readonly Component[] {
  const length = depthBehind(block, face);
  return [
    { cause: 'seating', standard: kit.seating / length },
    { cause: 'plate', standard: withinLimits(kit.plate) / length },
  ];
}

function indicator(kit: Kit): readonly Component[] {
  return [
    { cause: 'indicator resolution', standard: fromResolution(kit.indicatorResolution) },
    { cause: 'indicator error', standard: withinLimits(kit.indicatorError) },
  ];
}
