/*
 * Random numbers for Monte Carlo (JCGM 101:2008, 6.4), the same from the same seed. Bits and even
 * numbers are exactly the same on every engine; the others to the last digits of its logarithm,
 * for which numbers are thrown away is settled before a logarithm is taken.
 */

/** A stream of random numbers. */
export interface Random {
  /** A whole number from 0 to 2³² - 1. */
  bits(): number;
  /** Even between 0 and 1, neither of them, in steps of 2⁻⁵³. */
  even(): number;
  /** Normal, with mean 0 and standard deviation 1. */
  normal(): number;
  /** Student's t with `degrees` degrees of freedom, above 0; Infinity is normal. */
  student(degrees: number): number;
}

/** Four whole numbers from 0 to 2³² - 1, not all of them 0. */
export type RandomState = readonly [number, number, number, number];

/**
 * A stream from any seed: a whole number, of which the lower 32 bits count. The state is the first
 * four numbers of a SplitMix generator (Steele, Lea and Flood, OOPSLA 2014) of 32 bits, with the
 * mixer of MurmurHash3: a mixer sends only one number to 0, so the four are never all 0.
 *
 * @throws RangeError where the seed is not a whole number.
 */
export function randomFrom(seed: number): Random {
  if (!Number.isSafeInteger(seed)) throw new RangeError('A seed is a whole number');
  const word = (count: number) => mixed(((seed | 0) + Math.imul(count, GOLDEN)) | 0);
  return randomWith([word(1), word(2), word(3), word(4)]);
}

/** 2³² over the golden ratio, odd: its multiples never come round before 2³² of them. */
const GOLDEN = 0x9e3779b9;

/** The finaliser of MurmurHash3 by Austin Appleby, in the public domain. */
function mixed(word: number): number {
  let h = word;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/**
 * A stream from a state: xoshiro128** 1.1 by Blackman and Vigna, ACM Transactions on Mathematical
 * Software 47 (2021), in the public domain. Period 2¹²⁸ - 1.
 *
 * @throws RangeError where the state is all 0: nothing would ever come of it.
 */
export function randomWith(state: RandomState): Random {
  let [a, b, c, d] = state.map((word) => word | 0) as [number, number, number, number];
  if ((a | b | c | d) === 0) throw new RangeError('A state is not all 0');

  const bits = (): number => {
    const result = Math.imul(turned(Math.imul(b, 5), 7), 9);
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = turned(d, 11);
    return result >>> 0;
  };
  const even = (): number => {
    const whole = (bits() >>> 5) * 2 ** 26 + (bits() >>> 6);
    return whole === 0 ? even() : whole / 2 ** 53;
  };
  return {
    bits,
    even,
    normal: () => deviate(even, Number.POSITIVE_INFINITY),
    student: (degrees) => {
      if (!(degrees > 0)) throw new RangeError('Degrees of freedom are above 0');
      return deviate(even, degrees);
    },
  };
}

/**
 * Student's t by the polar method: a point is drawn in the unit circle and stretched. Bailey,
 * Mathematics of Computation 62 (1994); without end of the degrees of freedom it is that of
 * Marsaglia and Bray, SIAM Review 6 (1964), for the normal distribution. Of the pair it makes one
 * is dropped, so that no number depends on what was asked for before.
 */
function deviate(even: () => number, degrees: number): number {
  for (;;) {
    const u = 2 * even() - 1;
    const v = 2 * even() - 1;
    const square = u * u + v * v;
    if (square >= 1 || square === 0) continue;
    const logarithm = -2 * Math.log(square);
    const stretch =
      degrees === Number.POSITIVE_INFINITY ? logarithm : degrees * Math.expm1(logarithm / degrees);
    return u * Math.sqrt(stretch / square);
  }
}

function turned(word: number, by: number): number {
  return (word << by) | (word >>> (32 - by));
}
