import { expect, it } from 'vitest';
import { historiesOf } from '../../src/state/part-history';
import { BLOCK, compared, workOn } from './support/inspections';

it('each requirement has what every inspection found, and the work that went before', () => {
  const work = workOn('right', '20');
  const histories = historiesOf(
    [
      compared('before', '34', '31'),
      { ...work, id: 'again' },
      compared('nothing', '', ''),
      work,
      compared('after', '33', '31'),
    ],
    BLOCK,
  );
  expect(histories.map(({ requirement }) => requirement.id)).toEqual([
    'right square',
    'left square',
  ]);
  const [{ points } = { points: [] }] = histories;
  expect(points.map(({ inspection }) => inspection.id)).toEqual(['before', 'after']);
  expect(points.map(({ worked }) => worked.map(({ id }) => id))).toEqual([[], ['again', 'work']]);
  // (34 - 31)/(2 · 74) · 90 and (33 - 31)/(2 · 74) · 90 µm.
  expect(points.map(({ finding }) => finding.zone.width)).toEqual([
    expect.closeTo(1.8243, 4),
    expect.closeTo(1.2162, 4),
  ]);
});
