import type { InstrumentFigure } from '../entry/changed-in-drawer';
import {
  abrasiveName,
  type DrawerItem,
  type DrawerKind,
  type PlusMeans,
} from '../entry/instruments';

/** What the kinds of things in the drawer are called. */
export const KIND_NAMES: Readonly<Record<DrawerKind, string>> = {
  indicator: 'Indicator',
  comparator: 'Nose comparator',
  column: 'Column',
  micrometer: 'Micrometer',
  plate: 'Surface plate',
  abrasive: 'Abrasive',
};

/** A thing of the drawer by its name; one without a name by what it is. */
export function itemLabel(item: DrawerItem): string {
  const name = item.kind === 'abrasive' ? abrasiveName(item) : item.name.trim();
  return name || `${KIND_NAMES[item.kind]} without a name`;
}

/** What plus on a dial means, in a line. */
export function plusInWords(plus: PlusMeans): string {
  return plus === 'pushed in'
    ? 'Plus is plunger pushed in.'
    : 'This indicator counts the other way: plus on its dial is plunger let out. Type what the dial shows; the sign is turned for you.';
}

const FIGURES: Readonly<Record<InstrumentFigure, string>> = {
  name: 'its name',
  indicatorResolution: 'its smallest step',
  indicatorError: 'its error',
  micrometerResolution: 'its smallest step',
  micrometerError: 'its error',
  lever: 'plunger or lever',
  leverAngle: 'its angle',
  leverWithin: 'how well that angle is known',
  range: 'its range',
  plus: 'which way it counts',
};

/** That an instrument is otherwise in the drawer than it was read with, and what of it. */
export function changedInWords(name: string, figures: readonly InstrumentFigure[]): string {
  const what = figures.map((figure) => FIGURES[figure]).join(', ');
  return `${name} has been changed in the drawer since: ${what}. These readings go by what was known of it before.`;
}

/** That the kit has got an indicator that counts the other way than what a setup is read with. */
export function otherWayInWords(kit: string, item: DrawerItem): string {
  return `${kit} has ${itemLabel(item)} by now, and that counts the other way. As it stands, plus is plunger pushed in.`;
}
