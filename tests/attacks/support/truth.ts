import { adjust } from '../../../src/core/adjustment/adjustment';
import { outOfSquare } from '../../../src/core/part/face-errors';
import { FACES, pairsAround } from '../../../src/core/part/faces';
import { evaluate } from '../../../src/core/part/linear-form';
import type { Part } from '../../../src/core/part/part';
import { equationsOf } from '../../../src/core/readings/equations-of';
import type { Kit } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { isSit } from '../../../src/core/readings/unknowns';
import { zoneForms } from '../../../src/core/zones/requirement-forms';

/** Slopes, offsets, zeros and leans that no part has, each its own: what the answer is to find. */
function trueValue(unknown: string): number {
  // Each block sits square, as far as anyone knows: that is what the equations say of it.
  if (isSit(unknown)) return 0;
  const sum = [...unknown].reduce((total, letter) => (total * 31 + letter.charCodeAt(0)) % 9973, 7);
  const size = unknown.startsWith('slope') ? 0.2 : 200;
  return size * (sum / 9973 - 0.5);
}

/**
 * Where the same readings, showing exactly what a known block would make them show, do not give that
 * block back: each value with the true one. What they do not fix is not told, which is right too.
 */
export function untrue(part: Part, readings: readonly Reading[], given: Kit): readonly string[] {
  const kit = { ...given, leverAngle: 0, leverWithin: 0 };
  const measured = readings.filter(({ kind }) => kind !== 'assumed parallel');
  const equations = equationsOf(measured, part.block, kit);
  const truth = new Map(
    equations.flatMap(({ form }) =>
      [...form.keys()].map((name) => [name, trueValue(name)] as const),
    ),
  );
  const perfect = equations.map((each) => ({ ...each, value: evaluate(each.form, truth) }));
  const adjustment = adjust(perfect);
  const asked = [
    ...FACES.flatMap((base) =>
      pairsAround(base)
        .flat()
        .map((face) => outOfSquare(face, base)),
    ),
    ...part.requirements.flatMap((requirement) => zoneForms(requirement, part.block)),
  ];
  return asked.flatMap((form) => {
    const estimate = adjustment.estimate(form);
    if (estimate === undefined) return [];
    const whole = new Map([...form.keys()].map((name) => [name, trueValue(name)] as const));
    const value = evaluate(form, whole);
    const off = Math.abs(estimate.value - value);
    if (off <= 1e-6 * (1 + Math.abs(value)) + 1e-3 * estimate.standard) return [];
    return [
      `${[...form.keys()].join(' + ')}: ${estimate.value} and not ${value} ± ${estimate.standard}`,
    ];
  });
}
