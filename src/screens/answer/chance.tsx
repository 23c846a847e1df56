import type { Finding } from '../../core/inspection/findings';
import { shop } from '../../state/shop';
import { degreesInWords, rounded, deviation as shown } from '../../words/numbers';

/** How the verdict's chance comes about. */
export function Chance({ finding }: { readonly finding: Extract<Finding, { fixed: true }> }) {
  const { deviation } = shop.value.units;
  const { zone, requirement } = finding;
  const room = requirement.tolerance - zone.width;
  return (
    <p class="small">
      The tolerance {shown(requirement.tolerance, deviation)} less the width of the zone is{' '}
      {shown(room, deviation)}, which is {rounded(room / zone.standard, 2)} standard uncertainties:
      Student’s distribution with {degreesInWords(zone.degreesOfFreedom)} degrees of freedom gives
      the chance (JCGM 106).
    </p>
  );
}
