import { useState } from 'preact/hooks';
import { loadedWhenShown } from '../../widgets/loaded-when-shown';
import { HELP, type HelpTopic } from './topics';

const HelpText = loadedWhenShown(async () => (await import('./help-text')).HelpText);

/** Questions that can be asked at a place, each answered right there. What is never asked is never loaded. */
export function Help({ topics }: { readonly topics: readonly HelpTopic[] }) {
  const [asked, ask] = useState<HelpTopic>();
  return (
    <div class="help">
      <div class="row">
        {topics.map((topic) => (
          <button
            key={topic}
            type="button"
            class="help-button"
            aria-expanded={asked === topic}
            onClick={() => ask(asked === topic ? undefined : topic)}
          >
            {HELP[topic]}
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
