import { ResultHelp } from './result-help';
import type { HelpTopic } from './topics';
import { WayHelp } from './way-help';

/** The answer to one question, with its drawing. */
export function HelpText({ topic }: { readonly topic: HelpTopic }) {
  switch (topic) {
    case 'nose comparator':
    case 'four sides':
    case 'column':
    case 'micrometer':
    case 'over the top':
    case 'face map':
    case 'assumed parallel':
      return <WayHelp topic={topic} />;
    default:
      return <ResultHelp topic={topic} />;
  }
}
