import { type AnyFinding, type AnyFixedFinding, isPending } from '../core/inspection/any-finding';
import type { Seatings } from '../core/inspection/seatings';
import type { Verdict } from '../core/verdict/conformity';
import { sidesInWords } from './faces';
import { probabilityInWords, shortOfSureInWords } from './numbers';

/** The verdict as a heading. */
export const VERDICT_LABELS: Readonly<Record<Verdict, string>> = {
  in: 'In',
  out: 'Out',
  'too close to call': 'Too close to call',
};

/** How sure the verdict is, as a sentence. */
export function verdictInWords({
  probability,
  verdict,
}: Pick<AnyFixedFinding, 'probability' | 'verdict'>): string {
  const chance = chanceInWords({ probability, verdict });
  const against = probabilityInWords(1 - probability);
  switch (verdict) {
    case 'in':
      return `The chance that it meets the drawing is ${chance}.`;
    case 'out':
      return `The chance that it is outside the drawing is ${against}.`;
    case 'too close to call':
      return `The chance that it meets the drawing is ${chance}: not enough to say so, nor to deny it.`;
  }
}

/** The chance of conformity where the verdict stands beside it: never rounded to what it does not reach. */
export function chanceInWords({
  probability,
  verdict,
}: Pick<AnyFixedFinding, 'probability' | 'verdict'>): string {
  return verdict === 'too close to call'
    ? shortOfSureInWords(probability)
    : probabilityInWords(probability);
}

/** What would settle a verdict that is too close to call; `sides` as in `sidesInWords`. */
export function seatingsInWords(
  seatings: Seatings,
  sides?: Parameters<typeof sidesInWords>[0],
): string {
  if (seatings === 'none') {
    return 'So near the limit that twenty seatings more would not settle it, were they to agree with these. A finer instrument or a longer reach may; or bring it further in by what to take off.';
  }
  const times = seatings === 1 ? 'Once more' : `${seatings} times more`;
  return `${times} lifted, seated and read on ${sidesInWords(sides)} would likely settle it.`;
}

/** Where a part stands: '3 of 4 are in, 1 out', for '3 of 4 in' would be inches to some; what is still being worked out is not told yet. */
export function standsInWords(findings: readonly AnyFinding[]): string {
  const counts = (['in', 'out', 'too close to call'] as const).map((verdict) => ({
    verdict,
    count: findings.filter(
      (finding) => finding.fixed && !isPending(finding) && finding.verdict === verdict,
    ).length,
  }));
  const notFixed = findings.filter(({ fixed }) => !fixed).length;
  const pending = findings.filter(isPending).length;
  const [inside, ...others] = counts;
  const rest = [
    ...others.flatMap(({ verdict, count }) => (count === 0 ? [] : [`${count} ${verdict}`])),
    ...(pending === 0 ? [] : [`${pending} being worked out`]),
    ...(notFixed === 0 ? [] : [`${notFixed} not fixed by the readings`]),
  ];
  const count = inside?.count ?? 0;
  return [`${count} of ${findings.length} ${count === 1 ? 'is' : 'are'} in`, ...rest].join(', ');
}
