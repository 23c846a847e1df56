import type { Removal } from '../core/correction/removal';
import type { SaidFinding } from '../core/inspection/said';
import type { Face } from '../core/part/faces';
import type { LengthUnit } from '../core/units/length';
import type { DrawerItem } from '../entry/instruments';
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
  /** Present once the part is closed: with which readings it was let go, and by whom. */
  readonly closed?: { readonly at: string; readonly inspection: string; readonly who?: string };
  /** Present while the part is put away: it stays on record and can be found. */
  readonly archived?: { readonly at: string };
  /** Present once the part is removed: nothing of it is lost until somebody has it erased. */
  readonly removed?: { readonly at: string };
}

/** One inspection of a part: everything that was typed at the plate. */
export interface InspectionRecord extends RecordBase {
  readonly kind: 'inspection';
  readonly id: string;
  readonly part: string;
  readonly setups: readonly SetupEntry[];
  /** Readings that were taken out of the reckoning, by their id: when, and why. They stay on record. */
  readonly leftOut?: Readonly<Record<string, { readonly at: string; readonly why: string }>>;
  /** Guides and reminders that are not to be shown any more with it. */
  readonly dismissed?: readonly string[];
  /** Present once the readings are finished: what the numbers were worked out with. */
  readonly closed?: {
    readonly at: string;
    readonly part: PartEntry;
    readonly kit: KitEntry;
    /** The least probability for a verdict, in per cent, as typed. */
    readonly level?: string;
    /** Who finished them, where the shop has a name. */
    readonly who?: string;
    /** Version of the method that worked them out (`core/inspection/method.ts`), and what it said. */
    readonly method?: number;
    readonly said?: readonly SaidFinding[];
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
  /** Who measures, for the record: what is finished keeps it. */
  readonly who?: string;
  /** The kit in use. */
  readonly kit: KitEntry;
  /** What it is called, and the kits that lie in the drawer. */
  readonly kitName?: string;
  readonly otherKits?: readonly NamedKit[];
  /** The shop's instruments, plates and abrasives: entered once, chosen after. */
  readonly drawer?: readonly DrawerItem[];
  readonly units: ShopUnits;
  /** The least probability for a verdict, in per cent, as typed. */
  readonly level: string;
  /** How much of each tolerance a plan may leave, in per cent, as typed. */
  readonly share?: string;
  /** Where the shop draws the lines between lapping, grinding and machining. */
  readonly methodLimits?: MethodLimitsEntry;
  /** Since when the rate of a way of working is learned anew, by the name of the way. */
  readonly learnedSince?: Readonly<Record<string, string>>;
  /** When a comparator was set anew, by the name of its history: its next zero begins a new run. */
  readonly setAnew?: Readonly<Record<string, readonly string[]>>;
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

/** What somebody entered: nothing else can make it again. */
export type EnteredRecord = PartRecord | InspectionRecord | WorkRecord | ShopRecord;

/** An earlier state of a record, kept in full when another took its place: then it was made. It never changes. */
export interface VersionRecord extends RecordBase {
  readonly kind: 'version';
  /** Key of the record that it is a state of. */
  readonly of: string;
  /** When the state that is kept was last changed: with `of` it tells the state from all others. */
  readonly id: string;
  readonly record: EnteredRecord;
  /** Why another state took its place. */
  readonly why: string;
}

/**
 * Where a part stands, for the list of all parts: worked out from its chain and made again from it
 * at any time, so that it belongs in no backup.
 */
export interface SummaryRecord extends RecordBase {
  readonly kind: 'summary';
  readonly part: string;
  /** None while what it was worked out from has changed since. */
  readonly standing?: Standing;
  /** Likewise of what its inspections have found of comparators and rates, which lies by itself: `store/found.ts`. */
  readonly found?: FoundMark;
}

/** What was found of comparators and rates holds as long as all of this does. */
export interface FoundMark {
  /** When it was worked out, ISO 8601 in UTC. */
  readonly at: string;
  /** Version of the method that did. */
  readonly method: number;
  /** Mark of the kit that open readings were reckoned with. */
  readonly kit?: number;
}

/** What the latest readings of a part say. */
export interface Standing {
  /** When they were begun; none where nothing has been read. */
  readonly read?: string;
  /** The probability that the part conforms, of each requirement that the readings fix. */
  readonly probabilities: readonly number[];
  /** How many requirements they do not fix. */
  readonly notFixed: number;
  /** Mark of the kit that open readings were reckoned with: they follow the kit of the shop. */
  readonly kit?: number;
}

export type StoredRecord = EnteredRecord | VersionRecord | SummaryRecord;
