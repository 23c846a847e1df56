import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../src/core/readings/kit';
import { fieldKey } from '../../src/entry/field-keys';
import { defaultKit, KIT_LENGTHS, type KitEntry, kitShownIn } from '../../src/entry/kit-entry';
import { readKit } from '../../src/entry/read-kit';
import { noUnit } from './support/no-unit';
import { missing, told, wrong } from './support/told';
import { inch, micro, mm, tenths } from './support/typed';

function read(changed: Partial<KitEntry> = {}) {
  const { kit, problems } = readKit({ ...defaultKit(), ...changed });
  return { kit, problems: told(problems) };
}

describe('the kit', () => {
  it('as it comes is the kit of the core', () => {
    expect(read()).toEqual({ kit: DEFAULT_KIT, problems: {} });
  });

  it('has errors in µm and heights in mm, whatever they were typed in', () => {
    const { kit } = read({
      indicatorResolution: tenths('0.5'),
      plate: mm('0.002'),
      heightSetting: inch('0.01'),
    });
    expect(kit).toEqual({
      ...DEFAULT_KIT,
      indicatorResolution: 1.27,
      plate: 2,
      heightSetting: 0.254,
    });
  });

  it.each(['indicatorError', 'seating', 'plate', 'micrometerError', 'heightSetting'] as const)(
    'may have a %s of nothing',
    (item) => {
      expect(read({ [item]: mm('0') }).kit).toEqual({ ...DEFAULT_KIT, [item]: 0 });
    },
  );
});

describe('an item of the kit that is refused leaves no kit', () => {
  it.each(KIT_LENGTHS)('%s: not there, letters, below 0, beyond all reason', (item) => {
    const key = fieldKey.kit(item);
    const sign = item.endsWith('Resolution') ? 'Above 0' : 'Not below 0';
    const far = 'Larger than any usable kit. Check the unit';
    const against = (text: string) => read({ [item]: mm(text) });
    expect(against('')).toEqual({
      kit: undefined,
      problems: { [key]: missing('Needed to tell the doubt') },
    });
    expect(against('1e-3').problems[key]?.message).toBe(noUnit('e'));
    expect(against('-0.1')).toEqual({ kit: undefined, problems: { [key]: wrong(sign) } });
    expect(against('11')).toEqual({ kit: undefined, problems: { [key]: wrong(far) } });
  });

  it.each(['indicatorResolution', 'micrometerResolution'] as const)(
    'a %s of nothing would claim to know all',
    (item) => {
      expect(read({ [item]: micro('0') })).toEqual({
        kit: undefined,
        problems: { [fieldKey.kit(item)]: wrong('Above 0') },
      });
    },
  );
});

describe('shown in units', () => {
  it('is what was typed, and the default in the units in use as finely as an instrument has it', () => {
    const typed: KitEntry = { ...defaultKit(), seating: micro('0.4'), plate: mm('0.0005') };
    const shown = kitShownIn(typed, { deviation: 'tenths', size: 'in' });
    expect(shown).toMatchObject({
      indicatorResolution: { text: '0.394', unit: 'tenths' },
      indicatorError: { text: '0.197', unit: 'tenths' },
      seating: { text: '0.4', unit: 'µm' },
      plate: { text: '0.0005', unit: 'mm' },
      heightSetting: { text: '0.011811', unit: 'in' },
      plateLength: { text: '24.80315', unit: 'in' },
    });
  });

  it('is the default itself in its own units', () => {
    expect(kitShownIn(defaultKit(), { deviation: 'µm', size: 'mm' })).toEqual(defaultKit());
  });

  it('is the same kit in any', () => {
    const shown = kitShownIn(defaultKit(), { deviation: 'thou', size: 'in' });
    expect(readKit(shown)).toEqual(readKit(defaultKit()));
  });
});
