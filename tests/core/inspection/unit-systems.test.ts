import fc from 'fast-check';
import { describe, it } from 'vitest';
import { AXES } from '../../../src/core/part/faces';
import type { Part } from '../../../src/core/part/part';
import { DEFAULT_KIT, type Kit } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import {
  fromMicrometres,
  fromMillimetres,
  toMicrometres,
  toMillimetres,
} from '../../../src/core/units/length';
import { PART, someReadings } from '../support/inspections';
import { expectSameSaid, type Said, saidOfPart } from '../support/said';

/** A change of every length (mm) and of every deviation (µm) in an inspection. */
interface Change {
  readonly length: (millimetres: number) => number;
  readonly deviation: (micrometres: number) => number;
}

function changedPart({ length, deviation }: Change, part: Part): Part {
  const { x, y, z } = part.block.size;
  return {
    ...part,
    block: { size: { x: length(x), y: length(y), z: length(z) } },
    requirements: part.requirements.map((one) => ({ ...one, tolerance: deviation(one.tolerance) })),
  };
}

function changedReading({ length, deviation }: Change, reading: Reading): Reading {
  switch (reading.kind) {
    case 'nose comparator': {
      const [noseHeight, indicatorHeight] = [reading.noseHeight, reading.indicatorHeight].map(
        length,
      );
      const value = deviation(reading.value);
      return { ...reading, noseHeight: noseHeight!, indicatorHeight: indicatorHeight!, value };
    }
    case 'column':
      return { ...reading, height: length(reading.height), value: deviation(reading.value) };
    case 'micrometer': {
      const [x, y, z] = AXES.map((axis) => length(reading.point[axis]));
      return {
        ...reading,
        point: { x: x!, y: y!, z: z! },
        departure: deviation(reading.departure),
      };
    }
    case 'over the top':
    case 'face map': {
      const [x, y, z] = AXES.map((axis) => length(reading.point[axis]));
      return { ...reading, point: { x: x!, y: y!, z: z! }, value: deviation(reading.value) };
    }
    case 'assumed parallel':
      return { ...reading, within: deviation(reading.within) };
  }
}

/** What of the kit has no unit of length. */
const NO_LENGTHS: readonly string[] = ['leverAngle', 'leverWithin', 'seatingDegrees', 'warmth'];

function changedKit({ length, deviation }: Change, kit: Kit): Kit {
  const changed = Object.entries(kit).map(([name, error]: [string, number]) => [
    name,
    name === 'heightSetting' ? length(error) : NO_LENGTHS.includes(name) ? error : deviation(error),
  ]);
  return Object.fromEntries(changed) as Kit;
}

describe('units', { timeout: 60_000 }, () => {
  it('gives one answer, whether entered in mm and µm or in inches and tenths', () => {
    const entered: Change = {
      length: (millimetres) => fromMillimetres(millimetres, 'in'),
      deviation: (micrometres) => fromMicrometres(micrometres, 'tenths'),
    };
    const converted: Change = {
      length: (inches) => toMillimetres(inches, 'in'),
      deviation: (tenths) => toMicrometres(tenths, 'tenths'),
    };
    fc.assert(
      fc.property(someReadings, (readings) => {
        const part = changedPart(converted, changedPart(entered, PART));
        const again = readings.map((one) =>
          changedReading(converted, changedReading(entered, one)),
        );
        expectSameSaid(saidOfPart(part, again), saidOfPart(PART, readings));
      }),
    );
  });

  it('holds no unit of its own: inches and tenths fed as they are give tenths per inch', () => {
    // 1 in = 25.4 mm and 1 tenth = 2.54 µm: a slope in µm/mm is ten times as many tenths per inch.
    const asTheyAre: Change = { length: (mm) => mm / 25.4, deviation: (µm) => µm / 2.54 };
    const inTenths = (said: Said): Said =>
      new Map(
        [...said].map(([name, value]) => {
          if (value === undefined || name.startsWith('probability')) return [name, value];
          return [name, name.startsWith('zone') ? value / 2.54 : value * 10];
        }),
      );
    fc.assert(
      fc.property(someReadings, (readings) => {
        const raw = readings.map((one) => changedReading(asTheyAre, one));
        const kit = changedKit(asTheyAre, DEFAULT_KIT);
        expectSameSaid(
          saidOfPart(changedPart(asTheyAre, PART), raw, kit),
          inTenths(saidOfPart(PART, readings)),
        );
      }),
    );
  });
});
