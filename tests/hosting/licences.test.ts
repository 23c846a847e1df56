import { expect, test } from 'vitest';
import { licencesOf } from '../../src/hosting/licences';

test('a package is named with its version, and its licence in full', () => {
  const text = licencesOf(['node_modules/preact']);
  expect(text).toMatch(/^Highedge \(MIT\)\n/);
  expect(text).toMatch(/^preact [\d.]+ \(MIT\)$/m);
  expect(text).toContain('Copyright (c) 2015-present Jason Miller');
});

test('the licence of a tool goes without those of what it was made with', () => {
  const text = licencesOf(['node_modules/vite']);
  expect(text).toMatch(/^vite [\d.]+ \(MIT\)$/m);
  expect(text).not.toContain('bundled dependencies');
});

test('a package that may not be handed on is refused', () => {
  // A tool of the checks, under a licence that asks more of those who hand it on.
  expect(() => licencesOf(['node_modules/@axe-core/playwright'])).toThrow('MPL-2.0');
});
