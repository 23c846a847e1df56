import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { env, execPath } from 'node:process';
import { describe, expect, it } from 'vitest';
import { graveFaults } from './audit.mjs';

/** An answer in the shape of npm 10, with a fault of each of the `grades`; packages and faults are invented. */
function answered(...grades: readonly string[]): string {
  const vulnerabilities = Object.fromEntries(
    grades.map((severity, index) => {
      const name = `invented-package-${index + 1}`;
      const title = 'An invented fault';
      const via = [{ source: index, name, title, severity, cwe: ['CWE-1321'], range: '<2.0.0' }];
      const where = { effects: [], range: '<2.0.0', nodes: [`node_modules/${name}`] };
      return [name, { name, severity, isDirect: true, via, ...where, fixAvailable: false }];
    }),
  );
  const none = { info: 0, low: 0, moderate: 0, high: 0, critical: 0, total: grades.length };
  return JSON.stringify({
    auditReportVersion: 2,
    vulnerabilities,
    metadata: { vulnerabilities: none, dependencies: { prod: 12, dev: 0, total: 12 } },
  });
}

/** What npm 10 says where the registry has no audit. */
const NO_AUDIT = JSON.stringify({
  message: '405 Method Not Allowed - POST the address of the advisories',
  method: 'POST',
  statusCode: 405,
  body: '',
  error: { summary: '', detail: '' },
});

describe('an answer to npm audit', () => {
  it('names each package with a fault graded high or worse', () => {
    expect(graveFaults(answered('low', 'high', 'moderate', 'critical', 'info'))).toEqual([
      'invented-package-2 has a known fault, graded high: npm audit',
      'invented-package-4 has a known fault, graded critical: npm audit',
    ]);
  });

  it('takes a grade that it does not know for a grave one', () => {
    expect(graveFaults(answered('severe'))).toHaveLength(1);
  });

  it('without any fault is no fault, and not the lack of an answer', () => {
    expect(graveFaults(answered())).toEqual([]);
  });

  it.each(['', 'null', '<html></html>', '{"vulnerabilities":null}', NO_AUDIT])(
    'is none where it is %j',
    (text) => {
      expect(graveFaults(text)).toBeUndefined();
    },
  );
});

// The stand-in for npm is a shell script.
describe.skipIf(process.platform === 'win32')('the check of dependencies', () => {
  /** What it ends with and says where npm answers so. */
  function checked(answer: string) {
    const folder = mkdtempSync(join(tmpdir(), 'npm-'));
    try {
      writeFileSync(join(folder, 'answer.json'), answer);
      const script = `#!/bin/sh\ncat '${join(folder, 'answer.json')}'\n`;
      writeFileSync(join(folder, 'npm'), script, { mode: 0o755 });
      const path = [folder, env.PATH].join(delimiter);
      return spawnSync(execPath, ['tests/tools/dependencies.mjs'], {
        encoding: 'utf8',
        env: { ...env, PATH: path },
      });
    } finally {
      rmSync(folder, { recursive: true });
    }
  }

  it('fails on a grave fault and names the package', () => {
    const { status, stdout, stderr } = checked(answered('high'));
    expect(status).toBe(1);
    expect(stdout).toContain('Audited: 1 grave faults');
    expect(stderr).toContain('invented-package-1 has a known fault, graded high');
  });

  it('holds where nothing grave is known, and where the registry gave no answer', () => {
    expect(checked(answered('low'))).toMatchObject({ status: 0, stderr: '' });
    const { status, stdout } = checked(NO_AUDIT);
    expect(status).toBe(0);
    expect(stdout).toContain('Not audited');
  });
});
