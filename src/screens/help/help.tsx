import { useState } from 'preact/hooks';
import { loadedWhenShown } from '../../widgets/loaded-when-shown';
import { HELP, type HelpTopic } from './topics';

const HelpText = loadedWhenShown(async () => (await import('./help-text')).HelpText);

const WHAT_IS = 'What is ';

/** Without its article, so that all of them stand in one row of a narrow column too. */
const briefly = (what: string) => what.replace(/^the /, '');

/** Questions that can be asked at a place, each answered right there. What is never asked is never loaded. */
export function Help({ topics }: { readonly topics: readonly HelpTopic[] }) {
  const [asked, ask] = useState<HelpTopic>();
  const questions = topics.map((topic) => HELP[topic]);
  // Several questions that begin alike say that once, so that they stand in one row on a phone.
  const opening =
    questions.length > 1 && questions.every((one) => one.startsWith(WHAT_IS)) ? WHAT_IS : '';
  return (
    <div class="help">
      <div class="row">
        {opening && (
          <span class="soft" aria-hidden="true">
            {opening}
          </span>
        )}
        {topics.map((topic) => (
          <button
            key={topic}
            type="button"
            class="help-button"
            aria-expanded={asked === topic}
            aria-label={HELP[topic]}
            onClick={() => ask(asked === topic ? undefined : topic)}
          >
            {opening ? briefly(HELP[topic].slice(opening.length, -1)) : HELP[topic]}
          </button>
        ))}
      </div>
      {asked !== undefined && (
        <div class="note guide stack" role="note">
          <HelpText topic={asked} />
        </div>
      )}
    </div>
  );
}
