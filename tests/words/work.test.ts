import { expect, it } from 'vitest';
import { rateInWords } from '../../src/words/work';

it('a rate is told for ten seconds or strokes, with its expanded uncertainty', () => {
  const rate = { value: 0.0405, standard: 0.0301, degreesOfFreedom: Number.POSITIVE_INFINITY };
  expect(rateInWords(rate, 'seconds', 'µm')).toBe('0.41 ± 0.60 µm in 10 seconds');
  expect(rateInWords({ ...rate, value: -0.0405 }, 'strokes', 'µm')).toBe(
    '−0.41 ± 0.60 µm in 10 strokes',
  );
});
