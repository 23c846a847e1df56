import type { EnteredRecord } from '../../store/records';

/** What a merge does, or would do, counted in records. */
export interface Tally {
  /** Not here before. */
  readonly added: Readonly<Record<EnteredRecord['kind'], number>>;
  /** Here and in the file alike. */
  readonly same: number;
  /** Changed later in the file: that state goes on, the one from here is kept as a version. */
  readonly laterInFile: number;
  /** Changed later here: this goes on, the state of the file is kept as a version. */
  readonly laterHere: number;
  /** Nothing but earlier states came to it. */
  readonly moreVersions: number;
  /** Damaged here, or from a newer version of the app: left as it is. */
  readonly untouched: number;
}

export const NOTHING: Tally = {
  added: { part: 0, inspection: 0, work: 0, shop: 0 },
  ...{ same: 0, laterInFile: 0, laterHere: 0, moreVersions: 0, untouched: 0 },
};

/** What became of one record. */
export type Outcome = Exclude<keyof Tally, 'added'> | EnteredRecord['kind'];

export function counted(tally: Tally, outcomes: readonly Outcome[]): Tally {
  const count = (outcome: Outcome) => outcomes.filter((one) => one === outcome).length;
  const { added } = tally;
  return {
    added: {
      part: added.part + count('part'),
      inspection: added.inspection + count('inspection'),
      work: added.work + count('work'),
      shop: added.shop + count('shop'),
    },
    same: tally.same + count('same'),
    laterInFile: tally.laterInFile + count('laterInFile'),
    laterHere: tally.laterHere + count('laterHere'),
    moreVersions: tally.moreVersions + count('moreVersions'),
    untouched: tally.untouched + count('untouched'),
  };
}
