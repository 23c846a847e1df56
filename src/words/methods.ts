import type { MethodChoice, MethodReason } from '../core/correction/method/choose-method';
import type { Method } from '../core/correction/method/usual-finish';
import type { CutDepths } from '../core/correction/setting/cut-depths';
import type { PresentRise } from '../core/correction/setting/present-rise';
import type { Contact } from '../core/correction/setting/pressed-at';
import type { Shims } from '../core/correction/setting/shims';
import { type Face, oppositeFace } from '../core/part/faces';
import type { LengthUnit } from '../core/units/length';
import { highSideName } from './faces';
import { deviation, PER_CENT, place, rounded, size } from './numbers';
import { listed } from './plans';

/** A way of working as an instruction. */
export const METHOD_ORDERS: Readonly<Record<Method, string>> = {
  lap: 'Lap it by hand',
  grind: 'Grind it',
  machine: 'Machine it again',
};

interface Units {
  readonly size: 'mm' | 'in';
  readonly deviation: LengthUnit;
}

/** Ra in the unit that goes with the shop's sizes. */
function roughness(micrometres: number, unit: 'mm' | 'in'): string {
  if (unit === 'mm') return `${Number(micrometres.toPrecision(3))} µm`;
  return `${rounded(micrometres / 0.0254, 0)} µin`;
}

/** Something that speaks for a way of working or against it. */
export function reasonInWords(reason: MethodReason, units: Units): string {
  switch (reason.kind) {
    case 'amount':
      return reason.fits
        ? `The amount is no more than your limit of ${deviation(reason.limit, units.deviation)}.`
        : `${deviation(reason.asked, units.deviation)} is more than your limit of ${deviation(reason.limit, units.deviation)}.`;
    case 'area': {
      const side = size(Math.sqrt(reason.limit), units.size);
      return reason.fits
        ? `The face is no larger than ${side} square, your limit for a hand.`
        : `The face is larger than ${side} square, your limit for a hand.`;
    }
    case 'chuck':
      return reason.holds
        ? 'A magnetic chuck holds this material.'
        : 'A magnetic chuck does not hold this material: it takes a vice, an angle plate or a vacuum.';
    case 'finish': {
      const [finest, coarsest] = reason.usual.map((value) => roughness(value, units.size));
      const usual = `It usually leaves Ra ${finest} to ${coarsest}`;
      const asked = roughness(reason.required, units.size);
      if (!reason.fits) return `${usual}: the ${asked} asked for is finer than that.`;
      if (reason.usuallyLapped) return `${usual}, but for ${asked} the trade would lap.`;
      return `${usual}, and ${asked} is asked for.`;
    }
    case 'material unknown':
      return 'What the material is, and so whether a magnetic chuck holds it, is not known.';
    case 'finish unknown':
      return 'The drawing’s finish has not been put in, so it says nothing here.';
  }
}

/** What is recommended, or the least bad. */
export function choiceInWords({ method, suits }: MethodChoice): string {
  return suits
    ? METHOD_ORDERS[method]
    : `${METHOD_ORDERS[method]}, though something speaks against it`;
}

/** How the face is to indicate before it is cut level: 'Set it so that an indicator run over the bottom itself rises by …'. */
export function setUpInWords(face: Face, rises: readonly PresentRise[], unit: LengthUnit): string {
  const ways = rises.map(
    ({ high, rise }) =>
      `by ${deviation(rise, unit)} from the ${oppositeFace(high)} edge to the ${high} edge`,
  );
  return `Set it so that an indicator run over the ${face} itself rises ${ways.join(' and ')}; then cut level.`;
}

/** What goes under which edge where the block lies on the opposite face; undefined where that is not known. */
export function shimsInWords(shims: Shims | undefined, unit: LengthUnit): string {
  if (shims === undefined) {
    return 'How thick a shim that takes is not known: the readings do not fix the taper to the face it would lie on.';
  }
  if (shims.edges.length === 0) {
    return `Lying on its ${shims.on} it already stands so: no shim.`;
  }
  const on = `Lying on its ${shims.on},`;
  const [edge, ...others] = shims.edges;
  if (edge !== undefined && others.length === 0) {
    return `${on} that is a shim of ${deviation(edge.thickness, unit)} under the ${edge.under} edge. Further in it is thinner in proportion.`;
  }
  // Lying askew, the block rests on corners: no strip carries it.
  const corners = shims.corners
    .filter(({ thickness }) => thickness > 0)
    .map(
      ({ towards, thickness }) =>
        `${deviation(thickness, unit)} under the ${highSideName(towards)}`,
    );
  return `${on} that is ${listed(corners)}, and nothing under the fourth. Further in they are thinner in proportion.`;
}

/** How deep to cut from the first touch. */
export function depthInWords({ touches, cleansUp }: CutDepths, unit: LengthUnit): string {
  return `The tool touches the ${highSideName(touches)} first; ${deviation(cleansUp, unit)} deeper it has cleaned up.`;
}

/** What pressing further out than advised does. */
export function beyondKernInWords(further: number, contact: Contact, unit: 'mm' | 'in'): string {
  return `Press no further out: ${place(further, unit)} further, and only ${rounded(contact.share * 100, 0)}${PER_CENT} of the face stays down, the other edge lifts and the high one rounds.`;
}
