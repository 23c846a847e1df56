import type { Removal } from '../core/correction/removal';
import type { Face } from '../core/part/faces';
import type { LengthUnit } from '../core/units/length';
import type { KitEntry } from '../entry/kit-entry';
import type { MethodLimitsEntry } from '../entry/method-limits';
import type { PartEntry } from '../entry/part-entry';
import type { SetupEntry } from '../entry/setup-entry';

/** The format that this version writes. Each change of a record's shape raises it by one. */
export const FORMAT = 2;

interface RecordBase {
  readonly format: number;
  /** Time of making, ISO 8601 in UTC. */
  readonly made: string;
  /** Time of the last change, likewise: of two states of a record it tells the later. */
  readonly changed: string;
}

/** A part, as typed. */
export interface PartRecord extends RecordBase {
  readonly kind: 'part';
  readonly id: string;
  readonly entry: PartEntry;
  /** True where the part is our own invented example. */
  readonly example: boolean;
  /** Present once the part is closed: with which readings it was let go. */
  readonly closed?: { readonly at: string; readonly inspection: string };
}

/** One inspection of a part: everything that was typed at the plate. */
export interface InspectionRecord extends RecordBase {
  readonly kind: 'inspection';
  readonly id: string;
  readonly part: string;
  readonly setups: readonly SetupEntry[];
  /** Readings that were taken out of the reckoning, by their id: when, and why. They stay on record. */
  readonly leftOut?: Readonly<Record<string, { readonly at: string; readonly why: string }>>;
  /** Present once the readings are finished: what the numbers were worked out with. */
  readonly closed?: {
    readonly at: string;
    readonly part: PartEntry;
    readonly kit: KitEntry;
  };
}

/** Work done on a face between two inspections. */
export interface WorkRecord extends RecordBase {
  readonly kind: 'work';
  readonly id: string;
  readonly part: string;
  /** The inspection that it follows. */
  readonly after: string;
  readonly face: Face;
  readonly method: WorkMethod;
  readonly abrasive: string;
  readonly amount: { readonly text: string; readonly unit: 'seconds' | 'strokes' };
  readonly note: string;
  /** The removal that was advised: what was said then, whatever a later version would say. */
  readonly advised: Pick<Removal, 'mean' | 'slopes'>;
  /** Present where this work is to teach nothing about how fast the abrasive cuts. */
  readonly notLearned?: { readonly at: string };
}

export const WORK_METHODS = ['lap', 'grind', 'machine', 'scrape'] as const;
export type WorkMethod = (typeof WORK_METHODS)[number];

/** What holds for the whole shop. */
export interface ShopRecord extends RecordBase {
  readonly kind: 'shop';
  /** The kit in use. */
  readonly kit: KitEntry;
  /** What it is called, and the kits that lie in the drawer. */
  readonly kitName?: string;
  readonly otherKits?: readonly NamedKit[];
  readonly units: ShopUnits;
  /** The least probability for a verdict, in per cent, as typed. */
  readonly level: string;
  /** How much of each tolerance a plan may leave, in per cent, as typed. */
  readonly share?: string;
  /** Where the shop draws the lines between lapping, grinding and machining. */
  readonly methodLimits?: MethodLimitsEntry;
  /** Since when the rate of a way of working is learned anew, by the name of the way. */
  readonly learnedSince?: Readonly<Record<string, string>>;
}

export interface NamedKit {
  readonly name: string;
  readonly kit: KitEntry;
}

export interface ShopUnits {
  /** Sizes, heights and places. */
  readonly size: 'mm' | 'in';
  /** Readings and results. */
  readonly deviation: Exclude<LengthUnit, 'in'>;
}

export type StoredRecord = PartRecord | InspectionRecord | WorkRecord | ShopRecord;
