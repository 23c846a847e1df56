import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { allLicences } from '../../hosting/licences';

const text = allLicences();

test('every package that the app needs is named with its licence', () => {
  const { dependencies } = JSON.parse(readFileSync('package.json', 'utf8'));
  expect(Object.keys(dependencies)).not.toHaveLength(0);
  for (const [name, version] of Object.entries(dependencies)) {
    expect(text).toMatch(new RegExp(`^${name} ${version} \\(.+\\)$`, 'm'));
  }
});

test('every licence allows the app to be handed on under its own', () => {
  const named = [...text.matchAll(/^(?:@?[\w./-]+) [\d.]+ \((.+)\)$/gm)].map(([, name]) => name);
  expect(named.length).toBeGreaterThan(8);
  for (const name of named) expect(['MIT', 'Apache-2.0', 'BSD-3-Clause', 'ISC']).toContain(name);
});

test('the licence of a tool goes without those of what it was made with', () => {
  expect(text).toContain('\nvite ');
  expect(text).not.toContain('bundled dependencies');
});
