import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/inspection/findings';
import type { FlatnessFinding } from '../../../src/core/inspection/flatness';
import { needOf } from '../../../src/core/inspection/need';
import { requirement } from '../support/worked-block';
import { simpleZone } from '../support/zones';

type Verdict = Extract<Finding, { fixed: true }>['verdict'];

/** A squareness whose lean is `value` µm over the face, with a standard uncertainty of 1 µm. */
function squareness(value: number, verdict: Verdict): Finding {
  return {
    requirement: requirement('right', 'bottom', 2),
    fixed: true,
    verdict,
    zone: simpleZone(value, 1),
  } as unknown as Finding;
}

function flatness(verdict: Verdict): FlatnessFinding {
  return { fixed: true, verdict } as unknown as FlatnessFinding;
}

const NOT_FIXED = { fixed: false } as unknown as Finding;

describe('a wedge', () => {
  it.each<[string, Finding[], string]>([
    ['is not known where nothing is asked', [], 'not measured'],
    ['is not known where nothing is fixed', [NOT_FIXED], 'not measured'],
    ['is not needed where all is in', [squareness(0.5, 'in'), NOT_FIXED], 'in'],
    [
      'is not sure within its doubt of 2 µm',
      [squareness(1.9, 'too close to call')],
      'within doubt',
    ],
    ['is likely beyond it, none being out', [squareness(2.1, 'too close to call')], 'likely'],
    [
      'is sure where one is out',
      [squareness(2.1, 'too close to call'), squareness(6, 'out')],
      'sure',
    ],
    [
      'hangs on what is not in only',
      [squareness(9, 'in'), squareness(1.9, 'too close to call')],
      'within doubt',
    ],
  ])('%s', (_, findings, wedge) => {
    expect(needOf({ findings, flatness: [] }).wedge).toBe(wedge);
  });
});

it('faces are flat where every one that was mapped is in', () => {
  const flat = (...verdicts: Verdict[]) =>
    needOf({ findings: [], flatness: verdicts.map(flatness) }).areFlat;
  expect(flat()).toBe(undefined);
  expect(flat('in', 'in')).toBe(true);
  expect(flat('in', 'out')).toBe(false);
  expect(flat('in', 'too close to call')).toBe(false);
});
