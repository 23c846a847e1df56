import type { Plan, PlannedEffect, PlannedSize, Stop } from '../core/correction/plan/plan';
import type { Axis, Face } from '../core/part/faces';
import type { LengthUnit } from '../core/units/length';
import { lengthText } from '../entry/typed-length';
import { requirementName } from './faces';
import { deviation, size } from './numbers';

const AXIS_NAMES: Readonly<Record<Axis, string>> = { x: 'X', y: 'Y', z: 'Z' };

/** Names in a row: 'right', 'right and left', 'right, left and top'. */
export function listed(names: readonly string[]): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** What a plan is, as a heading: 'Work the bottom', 'Work the bottom and the right'. */
export function planName({ steps }: Pick<Plan, 'steps'>): string {
  return `Work ${listed(steps.map(({ face }) => `the ${face}`))}`;
}

/** mm³ in each unit of volume: an inch is 25.4 mm exactly. */
const CUBES = { mm: 1, in: 25.4 ** 3 } as const;

/**
 * How much stock a plan takes, of `volume` in mm³: to three figures, for a wedge may be a hundredth of
 * a mm³ or ten, and never by powers of ten, which nobody at a bench reads. '1.46 mm³', '0.0000891 in³'.
 */
export function volumeInWords(volume: number, unit: 'mm' | 'in'): string {
  const inUnit = Number((volume / CUBES[unit]).toPrecision(3));
  const decimals = inUnit === 0 ? 0 : Math.max(0, 2 - Math.floor(Math.log10(inUnit)));
  return `${lengthText(inUnit, decimals)} ${unit}³`;
}

/** What stops a plan: '0.004 mm short on the 60 mm size (X)'. */
export function stopInWords(
  stop: Stop,
  nominal: Readonly<Record<Axis, number>>,
  units: { readonly size: 'mm' | 'in'; readonly deviation: LengthUnit },
): string {
  if (stop.kind === 'size') {
    const name = `the ${size(nominal[stop.axis], units.size)} size (${AXIS_NAMES[stop.axis]})`;
    const already =
      stop.before > 0 ? `, ${deviation(stop.before, units.deviation)} of it already` : '';
    return `${deviation(stop.shortfall, units.deviation)} short on ${name}${already}`;
  }
  return `${requirementName(stop.requirement)} stays ${deviation(stop.excess, units.deviation)} over what it is to come to`;
}

/** Why a requirement cannot be brought as far as asked; undefined where it can. */
export function shortOfAimInWords(effect: PlannedEffect): string | undefined {
  const name = requirementName(effect.requirement);
  if (effect.doubtAlone) {
    return `${name}: the doubt of the readings alone takes up the share of the tolerance. Read again before anything comes off.`;
  }
  if (effect.formAlone) {
    return `${name}: the face is out of flat by more than the share of the tolerance. A plane cut does not mend that: flatten it first.`;
  }
  return undefined;
}

/** What a plan leaves of a size: 'X, 60 mm: loses up to 1.22 µm; −2.40 µm from nominal is left where it is least, −10.00 µm allowed'. */
export function sizeLeftInWords(
  { axis, known, corners, limits }: PlannedSize,
  nominal: number,
  units: { readonly size: 'mm' | 'in'; readonly deviation: LengthUnit },
): string {
  const show = (micrometres: number) => deviation(micrometres, units.deviation);
  const comesOff = Math.max(...corners.map((corner) => corner.comesOff));
  const name = `${AXIS_NAMES[axis]}, ${size(nominal, units.size)}: loses up to ${show(comesOff)}`;
  if (!known) return `${name}; the size itself has not been measured at three places or more`;
  const least = Math.min(...corners.map((corner) => corner.after ?? 0));
  const over = Math.max(...corners.map((corner) => corner.over));
  const allowed = limits.lower === undefined ? '' : `, ${show(limits.lower)} allowed`;
  const stays = over > 0 ? `; it stays ${show(over)} over its upper limit` : '';
  return `${name}; ${show(least)} from nominal is left where it is least${allowed}${stays}`;
}

/** The faces that would have to be freed: 'Free the bottom or the top …'. */
export function releasesInWords(releases: readonly Face[]): string {
  const names = releases.map((face) => `the ${face}`);
  const either =
    names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;
  return `It could be done if ${either} were not marked finished.`;
}
