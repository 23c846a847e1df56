import { env } from 'node:process';
import { mergeConfig } from 'vitest/config';
import mutationTests from './mutation-tests';

const { file, from, to, by } = JSON.parse(env.SWAP ?? '{"file":""}');

/** The tests of a mutation run, on sources in which one word is swapped for another. */
export default mergeConfig(mutationTests, {
  plugins: [
    {
      name: 'swapped',
      enforce: 'pre',
      transform(code: string, id: string) {
        if (file === '' || !id.endsWith(`/${file}`)) return;
        return { code: code.slice(0, from) + by + code.slice(to), map: null };
      },
    },
  ],
});
