import { describe, expect, it } from 'vitest';
import { normalBelow } from '../../../src/core/statistics/normal';
import { type Random, randomFrom, randomWith } from '../../../src/core/statistics/random';
import { studentBelow } from '../../../src/core/statistics/student';
import { expectClose } from '../support/close';
import { FROM_1234, FROM_BYTES, FROM_SEED_20 } from './reference/xoshiro';

const COUNT = 20_000;

function draw(count: number, from: () => number): readonly number[] {
  return Array.from({ length: count }, from);
}

/**
 * The greatest distance between the share of numbers below and the part that should be, times √n:
 * Kolmogorov and Smirnov. It is above 1.95 for one sample in a thousand (from memory).
 */
function kolmogorov(values: readonly number[], below: (value: number) => number): number {
  const sorted = values.toSorted((one, other) => one - other);
  const gaps = sorted.map((value, place) => {
    const part = below(value);
    return Math.max(part - place / sorted.length, (place + 1) / sorted.length - part);
  });
  return Math.max(...gaps) * Math.sqrt(sorted.length);
}

function moment(values: readonly number[], power: number): number {
  return values.reduce((total, value) => total + value ** power, 0) / values.length;
}

describe('the bits', () => {
  it('are those of the authors, from the state 1, 2, 3, 4', () => {
    const random = randomWith([1, 2, 3, 4]);
    expect(draw(10, random.bits)).toEqual(FROM_1234);
  });

  it('are those of the authors, from a state with high bits set', () => {
    const random = randomWith(FROM_BYTES.state);
    expect(draw(4, random.bits)).toEqual(FROM_BYTES.outputs);
  });

  it('are whole numbers of 32 bits, each set half of the time', () => {
    const words = draw(COUNT, randomFrom(1).bits);
    expect(words.every((word) => Number.isInteger(word) && word >= 0 && word < 2 ** 32)).toBe(true);
    for (let bit = 0; bit < 32; bit += 1) {
      const share = words.filter((word) => (word >>> bit) & 1).length / COUNT;
      // Four and a half standard deviations of a share, for 32 of them at once.
      expectClose(share, 0.5, { absolute: (4.5 * 0.5) / Math.sqrt(COUNT) });
    }
  });
});

describe('a seed', () => {
  it('gives the same again, and another gives another', () => {
    const first = draw(20, randomFrom(7).bits);
    expect(draw(20, randomFrom(7).bits)).toEqual(first);
    const firsts = new Set(draw(2000, () => 0).map((_, seed) => randomFrom(seed).bits()));
    expect(firsts.size).toBe(2000);
  });

  it('gives what it always gave: saved seeds depend on it', () => {
    const random = randomFrom(20);
    expect(draw(3, random.bits)).toEqual(FROM_SEED_20);
  });

  it('may be any whole number, and counts by its lower 32 bits', () => {
    for (const seed of [0, -1, 2 ** 31, Number.MAX_SAFE_INTEGER, Number.MIN_SAFE_INTEGER]) {
      expect(new Set(draw(100, randomFrom(seed).bits)).size).toBe(100);
    }
    expect(randomFrom(5 + 2 ** 32).bits()).toBe(randomFrom(5).bits());
    expect(randomFrom(-1).bits()).toBe(randomFrom(2 ** 32 - 1).bits());
  });

  it('of neighbours gives streams that have nothing to do with each other', () => {
    const products = draw(COUNT / 4, () => 0).map((_, seed) => {
      const [here, there] = [randomFrom(seed).even() - 0.5, randomFrom(seed + 1).even() - 0.5];
      return here * there * 12;
    });
    expectClose(moment(products, 1), 0, { absolute: 4 / Math.sqrt(products.length) });
  });
});

describe('even numbers', () => {
  const values = draw(COUNT, randomFrom(2).even);

  it('lie between 0 and 1 and are spread evenly', () => {
    expect(values.every((value) => value > 0 && value < 1)).toBe(true);
    expect(kolmogorov(values, (value) => value)).toBeLessThan(1.95);
    expectClose(moment(values, 1), 1 / 2, { absolute: 4 / Math.sqrt(12 * COUNT) });
    expectClose(moment(values, 2), 1 / 3, { absolute: 4 * Math.sqrt(4 / 45 / COUNT) });
  });

  it('are never 0, though the bits may be', () => {
    const [bits, even] = [randomWith([1, 0, 1, 5]), randomWith([1, 0, 1, 5])];
    expect(draw(2, bits.bits)).toEqual([0, 0]);
    expect(even.even()).toBe(bits.even());
  });

  it('have 53 bits, the last ones as good as the first', () => {
    const wholes = values.map((value) => value * 2 ** 53);
    expect(wholes.every(Number.isInteger)).toBe(true);
    const odd = wholes.filter((whole) => whole % 2 === 1).length / COUNT;
    expectClose(odd, 0.5, { absolute: 2 / Math.sqrt(COUNT) });
  });

  it('follow one another without a trace', () => {
    for (const lag of [1, 2, 3]) {
      const products = values
        .slice(lag)
        .map((value, place) => 12 * (value - 0.5) * (values[place]! - 0.5));
      expectClose(moment(products, 1), 0, { absolute: 4 / Math.sqrt(COUNT) });
    }
  });
});

describe('normal numbers', () => {
  const values = draw(COUNT, randomFrom(3).normal);

  it('have the moments of the normal distribution, to four standard deviations', () => {
    expectClose(moment(values, 1), 0, { absolute: 4 * Math.sqrt(1 / COUNT) });
    expectClose(moment(values, 2), 1, { absolute: 4 * Math.sqrt(2 / COUNT) });
    expectClose(moment(values, 3), 0, { absolute: 4 * Math.sqrt(15 / COUNT) });
    expectClose(moment(values, 4), 3, { absolute: 4 * Math.sqrt(96 / COUNT) });
  });

  it('are spread like it', () => {
    expect(kolmogorov(values, normalBelow)).toBeLessThan(1.95);
  });
});

describe("Student's numbers", () => {
  it.each([1, 2.5, 5, 30])('with %d degrees of freedom are spread like them', (degrees) => {
    const random = randomFrom(4);
    const values = draw(COUNT, () => random.student(degrees));
    expect(kolmogorov(values, (value) => studentBelow(value, degrees))).toBeLessThan(1.95);
  });

  it('with 10 degrees of freedom have the variance 10/8', () => {
    const random = randomFrom(5);
    const values = draw(COUNT, () => random.student(10));
    // The fourth moment is 6.25: 3·ν²/((ν-2)(ν-4)).
    expectClose(moment(values, 2), 1.25, { absolute: 4 * Math.sqrt((6.25 - 1.25 ** 2) / COUNT) });
  });

  it('are told from normal ones, so that the test above means something', () => {
    const random = randomFrom(4);
    const values = draw(COUNT, () => random.student(5));
    expect(kolmogorov(values, normalBelow)).toBeGreaterThan(3);
  });

  it('without end of the degrees of freedom are the normal ones, and go to them', () => {
    const streams: readonly [Random, Random, Random] = [
      randomFrom(6),
      randomFrom(6),
      randomFrom(6),
    ];
    for (let count = 0; count < 100; count += 1) {
      const normal = streams[0].normal();
      expect(streams[1].student(Number.POSITIVE_INFINITY)).toBe(normal);
      expectClose(streams[2].student(1e12), normal, { relative: 1e-10 });
    }
  });
});

describe('what makes no sense is refused', () => {
  it.each([0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 60])('a seed of %d', (seed) => {
    expect(() => randomFrom(seed)).toThrow(RangeError);
  });

  it('a state of nothing but 0', () => {
    expect(() => randomWith([0, 0, 0, 0])).toThrow(RangeError);
  });

  it.each([0, -1, Number.NaN])('%d degrees of freedom', (degrees) => {
    expect(() => randomFrom(1).student(degrees)).toThrow(RangeError);
  });
});
