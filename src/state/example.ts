import type { InspectionRecord, PartRecord } from '../store/records';
import { keep } from './saving';
import { newId, newRecord, parts } from './shop';

interface Example {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
}

/** Adds the invented part to the shop. */
export function addExample(): Example {
  const example = exampleWith('');
  keep([example.part, example.inspection]);
  parts.value = new Map(parts.value).set(example.part.id, example.part);
  return example;
}

/**
 * An invented part, ready to be read: a comparator is set and a micrometer has been over it, so
 * that the two readings at the plate are all that is missing.
 *
 * @param reading what stands for either of those, µm.
 */
export function exampleWith(reading: string): Example {
  const base = newRecord();
  const mm = (text: string) => ({ text, unit: 'mm' as const });
  const part: PartRecord = {
    ...base,
    kind: 'part',
    id: newId(),
    example: true,
    entry: {
      name: 'Example block (invented)',
      job: 'Try-out',
      material: 'Aluminium',
      size: { x: mm('60'), y: mm('40'), z: mm('90') },
      datum: 'bottom',
      requirements: [
        { id: newId(), face: 'right', datum: 'bottom', tolerance: mm('0.005') },
        { id: newId(), face: 'left', datum: 'bottom', tolerance: mm('0.005') },
      ],
      finished: [],
    },
  };
  const inspection: InspectionRecord = {
    ...base,
    kind: 'inspection',
    id: newId(),
    part: part.id,
    setups: [
      {
        kind: 'nose comparator',
        id: newId(),
        faces: ['right', 'left'],
        base: 'bottom',
        noseHeight: mm('6'),
        indicatorHeight: mm('80'),
        placings: (['right', 'left'] as const).map((face) => ({
          id: newId(),
          face,
          reading: { text: reading, unit: 'µm' },
        })),
      },
      {
        kind: 'micrometer',
        id: newId(),
        faces: ['right', 'left'],
        places: [
          { id: newId(), up: mm('5'), across: mm(''), thickness: mm('60.001') },
          { id: newId(), up: mm('85'), across: mm(''), thickness: mm('60.001') },
        ],
      },
    ],
  };
  return { part, inspection };
}
