import { describe, expect, it } from 'vitest';
import { inspect } from '../../../src/core/inspection/inspect';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { DEFAULT_LEVEL } from '../../../src/core/verdict/conformity';
import { expectClose } from '../support/close';
import { assumedParallel, micrometer, nose, traverse } from '../support/readings';
import { partWith, requirement } from '../support/worked-block';

function answerTo(readings: readonly Reading[]) {
  const part = partWith([requirement('right', 'bottom')]);
  return inspect(part, readings, DEFAULT_KIT, DEFAULT_LEVEL);
}

const swept = [...traverse('right', { 10: 4, 80: 31 }), ...traverse('left', { 10: 7, 80: 24 })];
const taper = [micrometer('right', { z: -40 }, 1), micrometer('right', { z: 40 }, 3)];

describe('names that happen to be the same', () => {
  it('of a setting and a placing do not make one zero of two', () => {
    // The nose's zero is fixed by its swing and the taper; the column's zeros are others.
    const named = swept.map((reading) => ({ ...reading, placing: `placing on ${reading.face}` }));
    const readings = [nose('right', 134), nose('left', 131), ...named, ...taper];
    const alike = readings.map((reading) =>
      reading.kind === 'nose comparator' ? { ...reading, setting: 'placing on right' } : reading,
    );
    const [one, other] = [answerTo(readings), answerTo(alike)].map(
      ({ comparators }) => comparators,
    );
    expectClose(one?.[0]?.estimate?.value, 131.575, { absolute: 0.1 });
    expectClose(other?.[0]?.estimate?.value, one![0]!.estimate!.value, { absolute: 1e-9 });
  });

  it('of a placing and an assumption do not blame the assumption', () => {
    const blameless = [...swept, ...taper, assumedParallel('back')];
    const id = assumedParallel('back').id;
    const named = blameless.map((reading) =>
      reading.kind === 'column' && reading.face === 'right' ? { ...reading, placing: id } : reading,
    );
    for (const readings of [blameless, named]) {
      const { findings, sides } = answerTo(readings);
      expect(findings[0]).toMatchObject({ fixed: true, assumed: false });
      expect(sides[0]?.assumed).toBe(false);
    }
  });
});
