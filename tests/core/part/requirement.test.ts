import { expect, it } from 'vitest';
import { FACES, oppositeFace, pairsAround } from '../../../src/core/part/faces';
import { kindOf } from '../../../src/core/part/requirement';

it('asks for parallelism of opposite faces, squareness of neighbours, and flatness without a datum', () => {
  for (const face of FACES) {
    expect(kindOf({ face, datum: oppositeFace(face) })).toBe('parallelism');
    for (const datum of pairsAround(face).flat()) {
      expect(kindOf({ face, datum })).toBe('squareness');
    }
    expect(kindOf({ face, datum: undefined })).toBe('flatness');
    expect(kindOf({ face })).toBe('flatness');
  }
});
