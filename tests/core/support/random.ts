/** A generator of numbers that comes out the same from the same seed on every machine. */
export interface Random {
  /** Even between `low` and `high`. */
  between(low: number, high: number): number;
  /** Normal, with mean 0 and standard deviation 1. */
  normal(): number;
}

/** Mulberry32, by Tommy Ettinger, put in the public domain: 32 bits of state, period 2³². */
export function randomFrom(seed: number): Random {
  let state = seed | 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    between: (low, high) => low + (high - low) * next(),
    // Box and Muller, Annals of Mathematical Statistics 29 (1958); 1 - u is never 0.
    normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
  };
}

/** `count` generators with different seeds. */
export function manyRandoms(count: number, firstSeed = 1): readonly Random[] {
  return Array.from({ length: count }, (_, index) => randomFrom(firstSeed + index * 7919));
}
