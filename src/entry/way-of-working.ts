import type { WorkKind } from '../core/correction/rates/prior';
import type { Material } from '../core/statistics/expansion-coefficients';
import { knownMaterial } from './material';

/** What a rate of cutting is learned for: another material, abrasive or count cuts otherwise. */
export interface WayOfWorking {
  readonly material: string;
  readonly abrasive: string;
  readonly method: string;
  readonly unit: 'seconds' | 'strokes';
}

/** The name that a way is filed under: capitals and spaces do not make another one. */
export function wayName({ material, abrasive, method, unit }: WayOfWorking): string {
  return [material, abrasive, method, unit]
    .map((text) => text.trim().toLowerCase().replace(/\s+/g, ' '))
    .join(' · ');
}

/** What the core has to know of a way, as far as the words tell it. */
export function workKindOf({ material, abrasive, unit }: WayOfWorking): WorkKind {
  const known: Material | undefined = knownMaterial(material);
  const grit = gritOf(abrasive);
  return {
    per: unit === 'seconds' ? 'second' : 'stroke',
    ...(known !== undefined && { material: known }),
    ...(grit !== undefined && { grit }),
  };
}

/** The grit that an abrasive's name tells: 400 of 'P400 paper', '400 grit' or '400'. */
export function gritOf(abrasive: string): number | undefined {
  const found = /(?:^|[^0-9.,])p?\s?([1-9][0-9]{1,3})(?![0-9.,]*[0-9]|\s*(?:µm|um|mm))/i.exec(
    abrasive,
  );
  return found === null ? undefined : Number(found[1]);
}
