import { env, memoryUsage } from 'node:process';
import { Readable } from 'node:stream';
import { buffer } from 'node:stream/consumers';
import { constants, createGzip, deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { headLine } from '../../src/exchange/backup/format';
import { linesOf } from '../../src/exchange/backup/lines';
import { readBackup } from '../../src/exchange/backup/read-backup';
import { FileRefused } from '../../src/exchange/file-refused';
import { checkRecord } from '../../src/exchange/shape/check-record';
import { damagedBackups } from './support/damaged-backups';

// `npm run attack:imports` sets these; the check goes by the same few each time.
const COUNT = Number(env.ATTACK_COUNT ?? 300);
const SEED = Number(env.ATTACK_SEED ?? 1);

test(
  'a damaged backup is refused in words, or each record of it is taken whole or refused in words',
  async () => {
    const seen = { refused: 0, good: 0, bad: 0 };
    await fc.assert(
      fc.asyncProperty(damagedBackups, async (file) => {
        try {
          for await (const line of readBackup(file)) {
            seen[line.ok ? 'good' : 'bad'] += 1;
            // What was taken is a record still after it was written and read again.
            if (line.ok) expect(checkRecord(JSON.parse(JSON.stringify(line.record))).ok).toBe(true);
            else expect(line.message.length).toBeLessThan(400);
          }
        } catch (error) {
          expect(error).toBeInstanceOf(FileRefused);
          expect((error as FileRefused).message).toMatch(/^[A-Z].{5,120}$/);
          seen.refused += 1;
        }
        expect(Object.keys(Object.prototype)).toEqual([]);
        expect(({} as { hit?: number }).hit).toBeUndefined();
      }),
      { numRuns: COUNT, seed: SEED },
    );
    console.log(`seed ${SEED}: ${JSON.stringify(seen)}`);
    for (const times of Object.values(seen)) expect(times).toBeGreaterThan(COUNT / 20);
  },
  // This is only to end what hangs.
  120_000 + COUNT * 1000,
);

/** `gigabytes` of one letter, packed into about a thousandth. */
function bomb(gigabytes: number, letters: string): Promise<Buffer> {
  const piece = Buffer.alloc(1 << 20, letters);
  function* pieces() {
    for (let done = 0; done < gigabytes * 1024; done += 1) yield piece;
  }
  return buffer(Readable.from(pieces()).pipe(createGzip({ level: 1 })));
}

test('a line without end is refused long before it is unpacked', async () => {
  const file = new Blob([new Uint8Array(await bomb(0.5, 'x'))]);
  await expect(linesOf(file).next()).rejects.toThrow('A line in it is longer than any record');
});

/** The same made at once: a head, and a megabyte packed by itself over and over. Its end is never reached. */
function repeatedBomb(gigabytes: number, line: string): Blob {
  const packed = (text: string) =>
    new Uint8Array(deflateRawSync(text, { finishFlush: constants.Z_FULL_FLUSH }));
  const piece = packed(line.repeat((1 << 20) / line.length));
  const gzip = new Uint8Array([0x1f, 0x8b, 8, 0, 0, 0, 0, 0, 0, 3]);
  const head = packed(headLine({ made: '2024-03-05T14:07:00.000Z', app: '0.1.0' }));
  return new Blob([gzip, head, ...Array.from({ length: gigabytes * 1024 }, () => piece)]);
}

test('a bomb of five gigabytes is refused in little memory, long before its end', async () => {
  const line = `${' '.repeat((1 << 19) - 1)}\n`;
  const file = repeatedBomb(5, line);
  expect(file.size).toBeLessThan(10_000_000);
  const held = () => memoryUsage().heapUsed + memoryUsage().external;
  const before = held();
  let [bytes, most] = [0, 0];
  const unpack = async () => {
    for await (const { length } of linesOf(file)) {
      bytes += length + 1;
      most = Math.max(most, held());
    }
  };
  await expect(unpack()).rejects.toThrow('It unpacks to more than any backup holds');
  // What was held before may be collected meanwhile: then there is less.
  expect(most).toBeLessThan(before + 400_000_000);
  expect(bytes).toBeGreaterThan(0);
  expect(bytes).toBeLessThan(1e9);
});

test('a bomb of lines that are no records is refused after a few', async () => {
  let lines = 0;
  const read = async () => {
    for await (const { ok } of readBackup(repeatedBomb(5, '{"a":1},\n'))) lines += ok ? 0 : 1;
  };
  await expect(read()).rejects.toThrow('None of its records can be read');
  expect(lines).toBe(1000);
});

test('lines without end are refused where a backup would have ended', async () => {
  const file = new Blob([new Uint8Array(await bomb(0.1, '{}\n'))]);
  const count = async () => {
    let lines = 0;
    for await (const _ of linesOf(file, { line: 4_000_000, bytes: 10_000_000 })) lines += 1;
    return lines;
  };
  await expect(count()).rejects.toThrow('It unpacks to more than any backup holds');
});
