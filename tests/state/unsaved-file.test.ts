import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { readBackup } from '../../src/exchange/backup/read-backup';
import { keep } from '../../src/state/saving';
import { putPart } from '../../src/state/shop';
import { unsavedFile } from '../../src/state/unsaved-file';
import { inspection, part, summary } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';
import { failOnceAt } from './support/full-disk';

beforeEach(async () => {
  await startAfresh();
  vi.stubGlobal('__APP_VERSION__', '0.1.0');
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
});
afterEach(async () => {
  vi.restoreAllMocks();
  keep([part('last')]);
  await saving('saved');
  vi.unstubAllGlobals();
});

it('is a backup of what was refused, with its part, and needs no database', async () => {
  putPart(part('p'));
  await saving('saved');
  failOnceAt('i');
  keep([inspection('i', 'p'), summary('p')]);
  await saving('not saved');
  const file = await unsavedFile();
  expect(file.name).toBe('highedge not saved 2024-03-05 14-07.highedge');
  const lines = [];
  for await (const line of readBackup(file)) lines.push(line);
  expect(lines).toMatchObject([
    { ok: true, record: part('p') },
    { ok: true, record: inspection('i', 'p') },
  ]);
});
