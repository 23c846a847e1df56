import type { Plugin } from 'vite';

/**
 * What papaparse has for files on a network, streams and workers of its own, for rows as objects and for
 * marks between the cells that nobody named: tables come to it as text, with their mark, and stay text.
 */
const NOT_NEEDED = [
  'getWorkerBlob',
  'NetworkStreamer',
  'FileStreamer',
  'ReadableStreamStreamer',
  'DuplexStreamStreamer',
  'newWorker',
  'mainThreadReceivedMessage',
  'workerThreadReceivedMessage',
  'fillHeaderFields',
  'testFloat',
  'shouldApplyDynamicTyping',
  'parseDynamic',
  'applyHeaderAndDynamicTypingAndTransformation',
  'guessDelimiter',
] as const;

/** Papaparse without what nothing here calls: all of it is stored for offline use. Fails where another papaparse is built otherwise. */
export function lightTables(): Plugin {
  return {
    name: 'light-tables',
    apply: 'build',
    // As it is written, not the packed one.
    config: () => ({ resolve: { alias: { papaparse: 'papaparse/papaparse.js' } } }),
    transform: {
      filter: { id: /papaparse\.js/ },
      handler: (code) => NOT_NEEDED.reduce(without, code),
    },
  };
}

/** The code with nothing in the function `name`, which ends as far in as it begins. */
function without(code: string, name: string): string {
  const whole = new RegExp(`\\n(\\t+)function ${name}\\([^)]*\\)\\s*\\{\\n[\\s\\S]*?\\n\\1\\}\\n`);
  if (!whole.test(code)) throw new Error(`Papaparse has no such function any more: ${name}`);
  return code.replace(whole, `\n$1function ${name}() {}\n`);
}
