import { describe, expect, it } from 'vitest';
import { fieldKey } from '../../src/entry/field-keys';
import { defaultKit, type KitEntry, PLATE_KINDS, type PlateKind } from '../../src/entry/kit-entry';
import { readKit } from '../../src/entry/read-kit';
import { FEDERAL_TABLE, ISO_TABLE } from '../core/statistics/reference/plates';
import { noUnit } from './support/no-unit';
import { missing, told, wrong } from './support/told';
import { inch, mm } from './support/typed';

function plate(changed: Partial<KitEntry>) {
  const { kit, problems } = readKit({ ...defaultKit(), ...changed });
  return { overall: kit?.plateOverall, kit, problems: told(problems) };
}

describe('a plate by its grade', () => {
  it.each(ISO_TABLE)('ISO 8512, %d × %d mm: %j µm as printed', (length, width, printed) => {
    printed.forEach((flatness, grade) => {
      const plateKind = `ISO 8512 grade ${grade}` as PlateKind;
      const sides = { plateLength: mm(String(length)), plateWidth: mm(String(width)) };
      const { overall } = plate({ plateKind, ...sides });
      const step = grade === 0 ? 0.5 : 1;
      expect(Math.abs(overall!.flatness - flatness)).toBeLessThanOrEqual(step / 2 + 1e-9);
      expect(overall!.diagonal).toBeCloseTo(Math.sqrt(length ** 2 + width ** 2), 9);
    });
  });

  it.each(FEDERAL_TABLE)('GGG-P-463c, %d × %d in: AA %d µin, A twice, B four times', (...row) => {
    const [length, width, printed] = row;
    for (const [grade, factor] of [
      ['AA', 1],
      ['A', 2],
      ['B', 4],
    ] as const) {
      const plateKind = `GGG-P-463c grade ${grade}` as const;
      const sides = { plateLength: inch(String(length)), plateWidth: inch(String(width)) };
      const { overall } = plate({ plateKind, ...sides });
      const microinches = overall!.flatness / 0.0254 / factor;
      const step = printed < 100 ? 25 : 50;
      expect(Math.abs(microinches - printed)).toBeLessThanOrEqual(step / 2 + 1e-9);
    }
  });

  it('is one of those that can be chosen, each with a flatness of its own', () => {
    const found = PLATE_KINDS.map((plateKind) => plate({ plateKind }).overall?.flatness);
    expect(found[0]).toBeUndefined();
    expect(new Set(found).size).toBe(PLATE_KINDS.length);
  });
});

describe('the sides of a plate', () => {
  const GRADED = { plateKind: 'ISO 8512 grade 0' } as const;

  it.each([
    [mm(''), missing('Needed with a grade')],
    [mm('49.9'), wrong('Under 50 mm: too small for a plate')],
    [mm('0'), wrong('Under 50 mm: too small for a plate')],
    [mm('-630'), wrong('Under 50 mm: too small for a plate')],
    [mm('10001'), wrong('Over 10 m: check the size and the unit')],
    [mm('big'), wrong(noUnit('big'))],
  ])('of %j leave no kit', (side, problem) => {
    for (const item of ['plateLength', 'plateWidth'] as const) {
      const { kit, problems } = plate({ ...GRADED, [item]: side });
      expect(kit).toBeUndefined();
      expect(problems).toEqual({ [fieldKey.kit(item)]: problem });
    }
  });

  it('may be just so small and just so large', () => {
    expect(plate({ ...GRADED, plateLength: mm('50'), plateWidth: mm('50') }).problems).toEqual({});
    expect(plate({ ...GRADED, plateLength: mm('10000') }).problems).toEqual({});
  });

  it('do not matter where what the plate does is stated instead', () => {
    const { kit, overall } = plate({ plateLength: mm('nonsense'), plateWidth: mm('') });
    expect(kit).toBeDefined();
    expect(overall).toBeUndefined();
  });
});
