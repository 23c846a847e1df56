/**
 * Outputs of xoshiro128** 1.1 from the state 1, 2, 3, 4, made with the authors' own program: found
 * in the tests of the Rust crate rand_xoshiro and of others, and worked again by hand for the first.
 */
export const FROM_1234 = [
  11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597,
  4258142804,
] as const;

/** The same from another state: found in edorfaus/xoshiro-6502, made with the authors' program. */
export const FROM_BYTES = {
  state: [0x964d4a0c, 0xd40ab895, 0xad7fdecb, 0x3006f0f0],
  outputs: [0xf1391922, 0x6fe53806, 0xa5be2840, 0xf510ee70],
} as const;

/** The first outputs from the seed 20 with our way of seeding: derived, in another language. */
export const FROM_SEED_20 = [1534046750, 1787193819, 1815436639] as const;
