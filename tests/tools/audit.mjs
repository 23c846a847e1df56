// @ts-check

/** Grades that are let pass: whatever else a fault is graded as, now or in time, is grave. */
const LIGHT = ['info', 'low', 'moderate'];

/**
 * What `npm audit --json` knows of grave faults, a line for each package.
 *
 * @param {string} answer
 * @returns {string[] | undefined} undefined where the registry gave none.
 */
export function graveFaults(answer) {
  const faults = reportIn(answer)?.vulnerabilities;
  if (typeof faults !== 'object' || faults === null) return undefined;
  return Object.entries(faults)
    .filter(([, { severity }]) => !LIGHT.includes(severity))
    .map(([name, { severity }]) => `${name} has a known fault, graded ${severity}: npm audit`);
}

/**
 * @param {string} answer
 * @returns {{ vulnerabilities?: Record<string, { severity: string }> } | null | undefined}
 */
function reportIn(answer) {
  try {
    return JSON.parse(answer);
  } catch {
    // A proxy, or npm itself, may answer with a page or with nothing.
    return undefined;
  }
}
