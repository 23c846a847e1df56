import { env } from 'node:process';
import { defineConfig } from 'vitest/config';
import mutationTests from './mutation-tests';
import { type Slip, withSlip } from './slips.mjs';

const slip: Slip = JSON.parse(env.SLIP ?? '{"file":""}');
const isOfEntry = slip.file.startsWith('src/entry/');

/** The quick tests of the core, or those of what is typed, on sources in which one slip is made. */
export default defineConfig({
  test: isOfEntry ? { include: ['tests/entry/*.test.ts'] } : { ...mutationTests.test },
  plugins: [
    {
      name: 'slip',
      enforce: 'pre',
      transform(code: string, id: string) {
        if (slip.file === '' || !id.endsWith(`/${slip.file}`)) return;
        return { code: withSlip(code, slip), map: null };
      },
    },
  ],
});
