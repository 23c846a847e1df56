import type { Plugin } from 'vite';

/**
 * What uPlot has made when it is loaded, and what stands in its place: the charts write their numbers
 * themselves, and have no dates.
 */
const IN_PLACE_OF: readonly (readonly [string, string])[] = [
  ["new Intl.NumberFormat(domEnv ? nav.language : 'en-US')", '{ format: String }'],
  ['new Intl.DateTimeFormat().resolvedOptions().timeZone', 'undefined'],
];

/**
 * uPlot without two formatters of the browser's. A phone takes longer to make them than to draw a
 * chart, all in one task that no key gets into. Fails where another uPlot makes them otherwise.
 */
export function lightCharts(): Plugin {
  return {
    name: 'light-charts',
    apply: 'build',
    transform: {
      filter: { id: /uPlot\.esm\.js$/ },
      handler: (code) => IN_PLACE_OF.reduce(replaced, code),
    },
  };
}

function replaced(code: string, [made, instead]: readonly [string, string]): string {
  if (!code.includes(made)) throw new Error(`uPlot has no such line any more: ${made}`);
  return code.replace(made, instead);
}
