import { describe, expect, it } from 'vitest';
import { flatness } from '../../../../src/core/zones/form/flatness';
import type { Contact } from '../../../../src/core/zones/form/minimum-zone-fit';
import { straightness } from '../../../../src/core/zones/form/straightness';
import { NORRIS } from '../../reference/strd-norris';
import { expectClose } from '../../support/close';
import { expectDigits } from '../../support/digits';
import { ANSCOMBE } from './reference/anscombe';
import { FIVE_POINTS } from './reference/five-points';
import { NORRIS_ZONE } from './reference/norris-zone';
import { verifyCertificate } from './support/certificate';

const NEAR = { absolute: 1e-12, relative: 1e-12 };

function linePoints(x: readonly number[], y: readonly number[]) {
  return x.map((u, i) => ({ u, deviation: y[i]! }));
}

function expectContacts(contacts: readonly Contact[], expected: Readonly<Record<number, number>>) {
  expect(contacts.map(({ index }) => index).sort((a, b) => a - b)).toEqual(
    Object.keys(expected).map(Number),
  );
  for (const { index, share } of contacts) expectClose(share, expected[index]!, NEAR);
}

describe.each(ANSCOMBE)('straightness of Anscombe $name', ({ x, y, published, derived }) => {
  const points = linePoints(x, y);
  const { leastSquares, minimumZone } = straightness(points);

  it('has the least-squares line as published', () => {
    const { height, middle, slopes } = leastSquares.plane;
    expect((height - slopes.u * middle.u).toFixed(2)).toBe(published.intercept);
    expect(slopes.u.toFixed(3)).toBe(published.slope);
  });

  it('has both zones as derived', () => {
    expectClose(leastSquares.width, derived.leastSquares, NEAR);
    expectClose(minimumZone.width, derived.minimumZone, NEAR);
    expectClose(minimumZone.plane.slopes.u, derived.slope, NEAR);
  });

  it('is held where the certificate says', () => {
    expectContacts(minimumZone.upper, derived.upper);
    expectContacts(minimumZone.lower, derived.lower);
    verifyCertificate(points, minimumZone);
  });
});

describe('straightness of NIST StRD Norris', () => {
  const points = linePoints(NORRIS.x, NORRIS.y);
  const { leastSquares, minimumZone } = straightness(points);

  it('has the certified line', () => {
    const { height, middle, slopes } = leastSquares.plane;
    expectDigits([height - slopes.u * middle.u, slopes.u], NORRIS.parameters, 12);
  });

  it('has both zones as derived', () => {
    expectClose(leastSquares.width, NORRIS_ZONE.leastSquares, NEAR);
    expectClose(minimumZone.width, NORRIS_ZONE.minimumZone, NEAR);
    expectClose(minimumZone.plane.slopes.u, NORRIS_ZONE.slope, NEAR);
    expectContacts(minimumZone.upper, NORRIS_ZONE.upper);
    expectContacts(minimumZone.lower, NORRIS_ZONE.lower);
    verifyCertificate(points, minimumZone);
  });
});

it('flatness of the five points of the forum: as derived, since no answer was published', () => {
  const { points, derived } = FIVE_POINTS;
  const { leastSquares, minimumZone } = flatness(points);
  expectClose(leastSquares.width, derived.leastSquares, NEAR);
  expectClose(minimumZone.width, derived.minimumZone, NEAR);
  expectClose(minimumZone.plane.slopes.u, derived.slopes.u, NEAR);
  expectClose(minimumZone.plane.slopes.v, derived.slopes.v, NEAR);
  expectContacts(minimumZone.upper, derived.upper);
  expectContacts(minimumZone.lower, derived.lower);
  verifyCertificate(points, minimumZone);
});
