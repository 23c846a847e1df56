import type { Material } from '../../statistics/expansion-coefficients';
import { chuckHolds } from './magnetic-chuck';
import { DEFAULT_METHOD_SETTINGS, type MethodSettings, refuseNoSettings } from './method-settings';
import {
  type FinishRange,
  LAPPED_FINISH,
  METHODS,
  type Method,
  USUAL_FINISHES,
} from './usual-finish';

/** What is to be done to one face. What is left out is not known. */
export interface FaceWork {
  /** The most that comes off anywhere, µm. */
  readonly wedge: number;
  /** The mean that comes off over the face, µm. */
  readonly mean: number;
  /** mm² */
  readonly area: number;
  readonly material?: Material;
  /** The Ra that the drawing asks of the face, µm. */
  readonly roughness?: number;
}

/** Something that speaks for a way of working or against it: against where it does not fit or hold. */
export type MethodReason =
  | {
      /** µm to take off, by the measure of this way of working, and the most that it takes. */
      readonly kind: 'amount';
      readonly asked: number;
      readonly limit: number;
      readonly fits: boolean;
    }
  | {
      /** mm² */
      readonly kind: 'area';
      readonly asked: number;
      readonly limit: number;
      readonly fits: boolean;
    }
  | { readonly kind: 'chuck'; readonly material: Material; readonly holds: boolean }
  | {
      /** Ra in µm. */
      readonly kind: 'finish';
      readonly usual: FinishRange;
      readonly required: number;
      /** False where the way of working does not usually come down to what is required. */
      readonly fits: boolean;
      /** True where it may come down to it, but the trade would lap for it. */
      readonly usuallyLapped: boolean;
    }
  | { readonly kind: 'material unknown' }
  | { readonly kind: 'finish unknown' };

/** A way of working and what speaks for it or against it. */
export interface MethodChoice {
  readonly method: Method;
  readonly suits: boolean;
  readonly reasons: readonly MethodReason[];
}

/**
 * The ways to do `work`, the recommended one first: those that suit before those that do not, and
 * of those that do not, the ones with less against them first. Among equals lapping comes before
 * grinding and grinding before machining, for the gentler way undoes less. What is not known is
 * told and speaks against nothing.
 *
 * @throws RangeError where the mean is below 0 or above the wedge, the wedge, the area or the
 * roughness is not above 0, or a setting is none.
 */
export function chooseMethod(
  work: FaceWork,
  settings: MethodSettings = DEFAULT_METHOD_SETTINGS,
): readonly MethodChoice[] {
  refuseNonsense(work);
  refuseNoSettings(settings);
  const choices = METHODS.map((method) => {
    const reasons = REASONS[method](work, settings);
    return { method, reasons, against: reasons.filter(isAgainst).length };
  });
  return choices
    .sort((one, other) => one.against - other.against)
    .map(({ method, reasons, against }) => ({ method, suits: against === 0, reasons }));
}

const REASONS: Readonly<
  Record<Method, (work: FaceWork, settings: MethodSettings) => readonly MethodReason[]>
> = {
  lap: (work, { mostLapped, largestLapped }) => [
    // Lapping is paid by the volume. A wedge that feathers out has a mean of half of it; a deeper
    // cut is as much work as the feathered wedge of the same mean.
    { kind: 'amount', ...within(2 * work.mean, mostLapped) },
    { kind: 'area', ...within(work.area, largestLapped) },
    finishOf('lap', work),
  ],
  grind: (work, { mostGround }) => [
    { kind: 'amount', ...within(work.wedge, mostGround) },
    chuckOf(work),
    finishOf('grind', work),
  ],
  machine: (work) => [finishOf('machine', work)],
};

/** 8 µin, which is 0.203 µm, is 0.2 µm to the trade. */
const NEARLY = 1.02;

/** Rounding must not make an amount that is just the limit exceed it. */
const ROUNDING = 1e-9;

function within(asked: number, limit: number) {
  return { asked, limit, fits: asked <= limit * (1 + ROUNDING) };
}

function chuckOf({ material }: FaceWork): MethodReason {
  return material === undefined
    ? { kind: 'material unknown' }
    : { kind: 'chuck', material, holds: chuckHolds(material) };
}

function finishOf(method: Method, { roughness: required }: FaceWork): MethodReason {
  if (required === undefined) return { kind: 'finish unknown' };
  const usual = USUAL_FINISHES[method];
  const fits = required >= usual[0];
  const usuallyLapped = fits && method !== 'lap' && required <= LAPPED_FINISH * NEARLY;
  return { kind: 'finish', usual, required, fits, usuallyLapped };
}

/** True where it speaks against the way of working. */
export function isAgainst(reason: MethodReason): boolean {
  if ('fits' in reason) return !reason.fits;
  return reason.kind === 'chuck' && !reason.holds;
}

function refuseNonsense({ wedge, mean, area, roughness }: FaceWork): void {
  if (!(wedge > 0 && wedge < Number.POSITIVE_INFINITY)) {
    throw new RangeError('Nothing is to come off');
  }
  if (!(mean >= 0 && mean <= wedge * (1 + ROUNDING))) {
    throw new RangeError('The mean lies between 0 and the wedge');
  }
  if (!(area > 0 && area < Number.POSITIVE_INFINITY)) throw new RangeError('An area is above 0');
  if (roughness !== undefined && !(roughness > 0)) throw new RangeError('An Ra is above 0');
}
