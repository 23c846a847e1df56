import { EXPANSIONS, type Material } from '../core/statistics/expansion-coefficients';

/** Words in a material's name, the more telling first, and what they are taken for. */
const NAMES: readonly (readonly [RegExp, Material])[] = [
  [/cast iron|gr[ae]y iron/i, 'grey cast iron'],
  [/ductile|nodular/i, 'ductile iron'],
  [/stainless/i, 'stainless steel 304'],
  [/tool steel|hardened/i, 'tool steel O1'],
  [/alumini?um|\b[267]0[0-9]{2}\b/i, 'aluminium 6061'],
  [/brass/i, 'brass C360'],
  [/bronze/i, 'bronze C932'],
  [/copper/i, 'copper C110'],
  [/granite/i, 'granite'],
  [/steel/i, 'mild steel 1020'],
];

/** The material that a name tells of; undefined where it tells of none. */
export function knownMaterial(name: string): Material | undefined {
  return NAMES.find(([words]) => words.test(name))?.[1];
}

/** Linear coefficient of expansion of a part of the named material, 10⁻⁶ per K; that of plain steel where the name tells nothing. */
export function expansionOf(name: string): number {
  return EXPANSIONS[knownMaterial(name) ?? 'mild steel 1020'].coefficient;
}
