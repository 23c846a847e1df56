import { PER_CENT, rounded } from './numbers';

/** The decision rule of the record, where `level` is the least probability for a verdict, from 0 to 1. */
export function decisionRuleInWords(level: number): string {
  const percent = (share: number) => `${Number((share * 100).toFixed(1))}${PER_CENT}`;
  return (
    `In: the probability that the true value meets the drawing is ${percent(level)} or more. ` +
    `Out: the probability that it does not is ${percent(level)} or more. Otherwise too close to call: ` +
    'neither is stated. This is a rule with guard bands on both sides, as in ISO 14253-1, the ' +
    'probabilities of conformity being worked out as in JCGM 106:2012, 7 and 8.'
  );
}

/** What the ± of the record is. */
export const UNCERTAINTY_IN_WORDS = `The ± is the expanded uncertainty U = k·u for a coverage of about 95${PER_CENT} (95.45${PER_CENT}), with the factor k of Student’s distribution for the effective degrees of freedom (GUM, JCGM 100:2008, G.4). Where a result takes in form, its interval for 95${PER_CENT} is from a Monte Carlo simulation (JCGM 101:2008). A flatness is the width of the minimum zone planes (ISO 12781-1, MZPL), which holds at the places read.`;

/** The value of a coverage factor: '2.06'. */
export function factorInWords(factor: number): string {
  return rounded(factor, 2);
}

/** Why there is no result. */
export function noResultInWords(why = 'nothing read'): string {
  if (why === 'wrong') {
    return 'There is no result: something that was typed with the readings cannot be right.';
  }
  if (why === 'part' || why === 'kit') {
    return `There is no result: the figures of the ${why} are not complete.`;
  }
  return 'There is no result: the readings do not say anything yet.';
}

/** What is taken of the faces between and beyond the places read. */
export const PLANES_IN_WORDS =
  'Faces are taken as planes but for the form that was read; the width is that of the zone over the whole face, of a flatness that over the places read.';

/** What is taken of the kit and the material. */
export function kitAssumptionInWords(material: string): string {
  const name = material.trim();
  const expansion = `The expansion is that of ${name === '' ? 'plain steel' : `the material as named, ${name}`}`;
  return `The figures of the kit below are as the shop states them. ${expansion}, and the part, the plate and the instruments have come to one temperature but for what is stated.`;
}
