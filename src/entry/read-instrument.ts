import type { InstrumentFigures } from '../core/readings/kit';
import { fieldKey } from './field-keys';
import {
  type DrawerItem,
  INDICATOR_LENGTHS,
  type IndicatorEntry,
  LEVER_NUMBERS,
  leverOf,
  MICROMETER_LENGTHS,
  type MicrometerEntry,
} from './instruments';
import { ProblemList, type Problems } from './problems';
import { readKitLength, readKitNumber, readPlate } from './read-kit';
import { type Limits, readLength } from './read-length';

/** What can be read of an indicator or a micrometer. */
export interface InstrumentRead {
  /** Undefined where any of its figures is wrong. */
  readonly figures: InstrumentFigures | undefined;
  /** How far an indicator travels in all, µm, where that is known. */
  readonly range: number | undefined;
  readonly problems: Problems;
}

const RANGE: Limits = {
  least: 10,
  most: 100_000,
  tooSmall: 'Under 0.01 mm: check the figure and the unit',
  tooLarge: 'Over 100 mm: check the figure and the unit',
};

/** The figures of an indicator or a micrometer, with what is wrong noted at its own fields. */
export function readInstrument(item: IndicatorEntry | MicrometerEntry): InstrumentRead {
  const problems = new ProblemList();
  const keyOf = (figure: string) => fieldKey.instrument(item.id, figure);
  const isIndicator = item.kind === 'indicator';
  const lengths = isIndicator
    ? INDICATOR_LENGTHS.map((figure) => [figure, item[figure]] as const)
    : MICROMETER_LENGTHS.map((figure) => [figure, item[figure]] as const);
  const numbers = isIndicator
    ? LEVER_NUMBERS.map((figure) => [figure, leverOf(item)[figure]] as const)
    : [];
  const figures: InstrumentFigures = Object.fromEntries([
    ...lengths.map(([figure, typed]) => {
      return [figure, readKitLength(figure, typed, keyOf(figure), problems)] as const;
    }),
    ...numbers.map(([figure, text]) => {
      return [figure, readKitNumber(figure, text, keyOf(figure), problems)] as const;
    }),
  ]);
  const range = isIndicator ? readLength(item.range, keyOf('range'), problems, RANGE) : undefined;
  const { all } = problems;
  return { figures: all.size > 0 ? undefined : figures, range, problems: all };
}

/** What is wrong with a thing in the drawer, at its own fields. */
export function problemsOf(item: DrawerItem): Problems {
  if (item.kind === 'indicator' || item.kind === 'micrometer') return readInstrument(item).problems;
  if (item.kind !== 'plate') return new Map();
  const problems = new ProblemList();
  const keyOf = (figure: string) => fieldKey.instrument(item.id, figure);
  if (item.plateKind === 'stated') readKitLength('plate', item.plate, keyOf('plate'), problems);
  readPlate(item, problems, keyOf);
  return problems.all;
}
