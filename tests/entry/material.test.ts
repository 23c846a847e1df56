import { describe, expect, it } from 'vitest';
import { expansionOf } from '../../src/entry/material';

/** Handbook coefficients, 10⁻⁶ per K, each from memory and none meant to better than 1. */
const ALUMINIUM = 23.5;
const STEEL = 11.7;
const STAINLESS = 17;
const CAST_IRON = 11;
const BRASS = 20;
const BRONZE = 18;
const COPPER = 17;
const GRANITE = 6.5;

describe('how a part grows with warmth, by the name of its material', () => {
  it.each([
    ['Aluminium', ALUMINIUM],
    ['ALUMINUM plate', ALUMINIUM],
    ['6061-T6', ALUMINIUM],
    ['7075', ALUMINIUM],
    ['EN AW-2024 alu 2024', ALUMINIUM],
    ['stainless steel 304', STAINLESS],
    ['Cast iron', CAST_IRON],
    ['gray iron', CAST_IRON],
    ['ductile iron', CAST_IRON],
    ['brass', BRASS],
    ['Phosphor bronze', BRONZE],
    ['copper', COPPER],
    ['black granite', GRANITE],
    ['hardened tool steel', STEEL],
    ['mild steel', STEEL],
    ['', STEEL],
    ['unobtainium', STEEL],
  ])('%j: about %d', (name, about) => {
    expect(Math.abs(expansionOf(name) - about)).toBeLessThan(1);
  });

  it('takes the more telling word, and no number for another', () => {
    expect(expansionOf('cast iron, hardened')).toBe(expansionOf('cast iron'));
    expect(expansionOf('hardened stainless')).toBe(expansionOf('stainless'));
    // A lot number is no alloy.
    expect(expansionOf('steel, lot 16061')).toBe(expansionOf('steel'));
    expect(expansionOf('steel 4140')).toBe(expansionOf('steel'));
  });
});
