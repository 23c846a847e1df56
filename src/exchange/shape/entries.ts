import * as v from 'valibot';
import { AXES } from '../../core/part/faces';
import { KIT_LENGTHS, KIT_NUMBERS } from '../../entry/kit-entry';
import { distinctIds } from '../../store/rules';
import { chosen, gradedPlate } from './instruments';
import { face, forEach, innerId, text, typedLength } from './pieces';

/*
 * Shapes of what is typed of a part, a kit and the limits of the methods, as `src/entry` has them.
 */

const requirement = v.strictObject({ id: innerId, face, datum: face, tolerance: typedLength });

const flatness = v.strictObject({ id: innerId, face, tolerance: typedLength });

const sizeLimits = v.strictObject({ lower: typedLength, upper: typedLength });

const plainFinish = { text, unit: v.picklist(['µm', 'µin']) };

const finish = v.strictObject({
  ...plainFinish,
  from: v.exactOptional(v.strictObject(plainFinish)),
});

export const partEntry = v.strictObject({
  name: text,
  job: text,
  material: text,
  size: v.strictObject(forEach(AXES, typedLength)),
  sizeLimits: v.exactOptional(v.strictObject(forEach(AXES, v.exactOptional(sizeLimits)))),
  finish: v.exactOptional(finish),
  datum: face,
  requirements: v.pipe(
    v.array(requirement),
    v.check((it) => distinctIds(it), 'Two requirements have one id'),
  ),
  flatness: v.exactOptional(
    v.pipe(
      v.array(flatness),
      v.check((it) => distinctIds(it), 'Two requirements have one id'),
    ),
  ),
  finished: v.array(face),
});

export const kitEntry = v.strictObject({
  ...forEach(KIT_LENGTHS, typedLength),
  ...forEach(KIT_NUMBERS, text),
  ...gradedPlate,
  chosen: v.exactOptional(chosen),
});

export const methodLimits = v.strictObject(
  forEach(['mostLapped', 'mostGround', 'lappedSide'], typedLength),
);
