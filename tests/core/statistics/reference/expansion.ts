/**
 * Linear expansion about room temperature, 10⁻⁶ per °C and per °F: Callister, Materials Science and
 * Engineering (2007), Table B.6, found second-hand. 316 stainless is 15.9 in older editions; its °F
 * column was not found.
 */
export const CALLISTER: Readonly<Record<string, readonly [number, number | undefined]>> = {
  'A36 steel': [11.7, 6.5],
  '1020 steel': [11.7, 6.5],
  '1040 steel': [11.3, 6.3],
  '4140 steel': [12.3, 6.8],
  '4340 steel': [12.3, 6.8],
  '304 stainless': [17.2, 9.6],
  '316 stainless': [16.0, undefined],
  '405 stainless': [10.8, 6.0],
  '440A stainless': [10.2, 5.7],
  '17-7PH': [11.0, 6.1],
  'gray iron G1800/G3000/G4000': [11.4, 6.3],
  'ductile iron 60-40-18': [11.2, 6.2],
  'ductile iron 80-55-06': [10.6, 5.9],
  'aluminium 1100': [23.6, 13.1],
  'aluminium 2024': [22.9, 12.7],
  'aluminium 6061': [23.6, 13.1],
  'aluminium 7075': [23.4, 13.0],
  'aluminium 356.0': [21.5, 11.9],
  'C11000 copper': [17.0, 9.4],
  'C26000 brass': [19.9, 11.1],
  'C36000 brass': [20.5, 11.4],
  'C93200 bearing bronze': [18.0, 10.0],
};

/** 20 to 100 °C, 10⁻⁶ per °C: engineering tables, found on the web. */
export const ENGINEERING_TABLES = { D2: 10.5, '440C': 10.1, '1045 steel': 11.6 } as const;

/** Handbook values from memory, not checked against anything. */
export const FROM_MEMORY = {
  '416 stainless': 9.9,
  'O1 tool steel': 11.2,
  'A2 tool steel': 10.7,
} as const;

/** Granites, 10⁻⁶ per °C: a generic value found on the web, and the range that types span, from memory. */
export const GRANITE = { generic: 7.9, least: 4, most: 9 } as const;

/** The second value for grey iron that a table has, against Callister's 11.4. */
export const GREY_IRON_ELSEWHERE = 10.8;
