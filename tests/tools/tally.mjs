// @ts-check
/** Sums up the reports of both test runners in one line, which a CI can read. */
import { readFileSync } from 'node:fs';
import { exit } from 'node:process';

/** @param {string} name */
const report = (name) => JSON.parse(readFileSync(`test-results/${name}.json`, 'utf8'));

const unit = report('unit');
const browser = report('browser').stats;
if (unit.numPassedTests === 0 || browser.expected === 0) {
  console.error('One of the test runners ran no test.');
  exit(1);
}

// One that passed at its second try has passed, and is named: the cause is to be found.
const passed = unit.numPassedTests + browser.expected + browser.flaky;
const failed = unit.numFailedTests + browser.unexpected;
const skipped = unit.numPendingTests + unit.numTodoTests + browser.skipped;
if (browser.flaky > 0)
  console.log(`${browser.flaky} of the browser's passed at the second try only.`);
console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
exit(failed > 0 ? 1 : 0);
