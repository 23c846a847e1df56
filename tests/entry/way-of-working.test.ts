import { describe, expect, it } from 'vitest';
import { gritOf, wayName, workKindOf } from '../../src/entry/way-of-working';

describe('the grit of an abrasive', () => {
  it.each([
    ['P400 paper', 400],
    ['p 320', 320],
    ['400 grit', 400],
    ['1000', 1000],
    ['#240 stone', 240],
    ['wheel, 46 grit', 46],
  ])('%j: %d', (name, grit) => {
    expect(gritOf(name)).toBe(grit);
  });

  it.each([
    '',
    'Lapping compound',
    'compound 15 µm',
    '150 µm film',
    '0.5 um',
    '12000 strokes',
    '3',
  ])('%j tells none', (name) => {
    expect(gritOf(name)).toBeUndefined();
  });
});

describe('a way of working', () => {
  const way = {
    ...{ material: 'Aluminium', abrasive: 'P400 paper', method: 'lap' },
    unit: 'seconds',
  } as const;

  it('is the same whatever its capitals and spaces', () => {
    expect(wayName({ ...way, material: ' aluminium', abrasive: 'p400  Paper ' })).toBe(
      wayName(way),
    );
  });

  it.each([
    { material: 'Brass' },
    { abrasive: 'P600 paper' },
    { method: 'scrape' },
    { unit: 'strokes' as const },
  ])('is another with %j', (changed) => {
    expect(wayName({ ...way, ...changed })).not.toBe(wayName(way));
  });

  it('tells the core no more than its words do', () => {
    expect(workKindOf(way)).toEqual({ per: 'second', material: 'aluminium 6061', grit: 400 });
    expect(workKindOf({ ...way, material: 'unobtainium', abrasive: '', unit: 'strokes' })).toEqual({
      per: 'stroke',
    });
    expect(workKindOf({ ...way, material: 'some steel' }).material).toBe('mild steel 1020');
  });
});
