import {
  DEFAULT_METHOD_SETTINGS,
  type MethodSettings,
} from '../core/correction/method/method-settings';
import { fieldKey } from './field-keys';
import { ProblemList, type Problems } from './problems';
import { type Limits, readLength } from './read-length';
import type { TypedLength } from './typed-length';

/** Where the shop draws the lines between lapping, grinding and machining, as typed. */
export interface MethodLimitsEntry {
  readonly mostLapped: TypedLength;
  readonly mostGround: TypedLength;
  /** Side of the largest square face that is lapped by hand. */
  readonly lappedSide: TypedLength;
}

/** Common practice, as if typed. */
export function usualMethodLimits(): MethodLimitsEntry {
  const { mostLapped, mostGround, largestLapped } = DEFAULT_METHOD_SETTINGS;
  return {
    mostLapped: { text: String(mostLapped), unit: 'µm' },
    mostGround: { text: String(mostGround), unit: 'µm' },
    lappedSide: { text: String(Math.sqrt(largestLapped)), unit: 'mm' },
  };
}

const DEPTH: Limits = {
  least: 0.1,
  most: 10_000,
  tooSmall: 'Above 0',
  tooLarge: 'Over 10 mm: check the figure and the unit',
};

const SIDE: Limits = {
  least: 1000,
  most: 1_000_000,
  tooSmall: 'Under 1 mm: check the figure and the unit',
  tooLarge: 'Over 1 m: check the figure and the unit',
};

const ASKED = 'Needed to choose between lapping, grinding and machining';

/** The lines that can be read; one that cannot is as in common practice, and is told. */
export function readMethodLimits(entry: MethodLimitsEntry): {
  readonly settings: MethodSettings;
  readonly problems: Problems;
} {
  const problems = new ProblemList();
  const read = (item: keyof MethodLimitsEntry, limits: Limits) =>
    readLength(entry[item], fieldKey.methodLimit(item), problems, limits, ASKED);
  const [lapped, ground] = [read('mostLapped', DEPTH), read('mostGround', DEPTH)];
  const side = read('lappedSide', SIDE);
  const usual = DEFAULT_METHOD_SETTINGS;
  return {
    settings: {
      mostLapped: lapped ?? usual.mostLapped,
      mostGround: ground ?? usual.mostGround,
      largestLapped: side === undefined ? usual.largestLapped : (side / 1000) ** 2,
    },
    problems: problems.all,
  };
}
