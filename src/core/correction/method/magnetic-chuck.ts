import type { Material } from '../../statistics/expansion-coefficients';

/** Whether a magnetic chuck holds a block of each material. Of the stainless steels only the martensitic ones. */
const HELD: Readonly<Record<Material, boolean>> = {
  'aluminium 2024': false,
  'aluminium 6061': false,
  'aluminium 7075': false,
  'cast aluminium 356': false,
  'mild steel 1020': true,
  'steel 1045': true,
  'alloy steel 4140': true,
  'tool steel A2': true,
  'tool steel D2': true,
  'tool steel O1': true,
  'stainless steel 304': false,
  'stainless steel 316': false,
  'stainless steel 416': true,
  'stainless steel 440C': true,
  'grey cast iron': true,
  'ductile iron': true,
  'brass C360': false,
  'bronze C932': false,
  'copper C110': false,
  granite: false,
};

/** Whether a magnetic chuck holds `material`. */
export function chuckHolds(material: Material): boolean {
  return HELD[material];
}
