import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { PAGE_POLICY, SECURITY_HEADERS } from '../../src/hosting/headers';

const blocks = [
  ...readFileSync('src/hosting/README.md', 'utf8').matchAll(/```(\w+)\n(.*?)```/gs),
].map(([, host, text]) => [host, text] as const);

test('no text becomes a script, and nothing comes from elsewhere', () => {
  const policy = SECURITY_HEADERS['Content-Security-Policy'];
  expect(policy).not.toMatch(/unsafe|https?:|\*|strict-dynamic|wasm/);
  expect(policy).toMatch(/^default-src 'none';/);
  expect(policy.startsWith(PAGE_POLICY)).toBe(true);
});

test('four kinds of host are told', () => {
  expect(blocks.map(([host]) => host)).toEqual(['text', 'nginx', 'apache', 'caddy']);
});

test.each(blocks)('what is written for %s hosts sends the headers as they are', (_, text) => {
  for (const [name, value] of Object.entries(SECURITY_HEADERS)) {
    const line = text?.split('\n').find((one) => one.includes(`${name}`));
    expect(line?.replaceAll('"', '')).toContain(value);
  }
});
