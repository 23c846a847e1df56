import fc from 'fast-check';
import { describe, it } from 'vitest';
import { minimumZonePlane } from '../../../../src/core/zones/form/flatness';
import { minimumZoneLine } from '../../../../src/core/zones/form/straightness';
import { expectClose } from '../../support/close';
import { verifyCertificate } from './support/certificate';
import { widthByEveryReference } from './support/every-reference';
import { somePoints } from './support/points';

const NEAR = { absolute: 1e-12 };

describe('the minimum zone against that of every reference, on whole numbers', () => {
  it('for planes', () => {
    fc.assert(
      fc.property(somePoints, (points) => {
        const zone = minimumZonePlane(points);
        fc.pre(zone.spread === 'face');
        expectClose(zone.width, widthByEveryReference(points, 2), NEAR);
        verifyCertificate(points, zone);
      }),
      { numRuns: 400 },
    );
  });

  it('for lines', () => {
    fc.assert(
      fc.property(somePoints, (points) => {
        const zone = minimumZoneLine(points);
        fc.pre(zone.spread === 'line');
        expectClose(zone.width, widthByEveryReference(points, 1), NEAR);
        verifyCertificate(
          points.map(({ u, deviation }) => ({ u, deviation })),
          zone,
        );
      }),
      { numRuns: 400 },
    );
  });
});
