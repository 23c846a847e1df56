import type { ComponentChildren } from 'preact';
import type { SidesAnswer } from '../../core/inspection/sides';
import type { Part } from '../../core/part/part';
import type { Problems } from '../../entry/problems';
import type { ReadingsBefore } from '../../entry/readings-before';
import type { SetupEntry } from '../../entry/setup-entry';
import type { LastTime } from '../../entry/taken-over';
import { Help } from '../help/help';
import type { HelpTopic } from '../help/topics';

/** What the sheet of any setup is given. */
export interface SetupSheetProps<S extends SetupEntry> {
  readonly setup: S;
  readonly part: Part;
  readonly problems: Problems;
  readonly before: ReadingsBefore;
  /** The readings before these, where there are any. */
  readonly lastTime: LastTime | undefined;
  /** What the readings say of this pair so far. */
  readonly sides: SidesAnswer | undefined;
  /** What is to be said beside the fields for what the instrument shows. */
  readonly beside?: ComponentChildren;
  /** What may be done in place of typing the heights, while they are empty. */
  readonly instead?: ComponentChildren;
  /** True where the readings are finished. */
  readonly locked: boolean;
  /** Given what makes of the setup as it is by then the one to be. */
  readonly onChange: (change: (setup: S) => S) => void;
  readonly onRemove: () => void;
}

interface SheetFrameProps {
  readonly title: string;
  readonly subtitle: string;
  readonly help: HelpTopic;
  readonly locked: boolean;
  readonly onRemove: () => void;
  readonly children: ComponentChildren;
}

/** The frame of a setup's sheet. */
export function SheetFrame(props: SheetFrameProps) {
  const { title, subtitle, help, locked, onRemove, children } = props;
  return (
    <section class="sheet setup" aria-label={`${title}: ${subtitle}`}>
      <div class="sheet-head sheet-title">
        <h3>{title}</h3>
        {!locked && (
          <button
            type="button"
            class="button button-quiet"
            aria-label={`Remove ${title}`}
            onClick={onRemove}
          >
            Remove
          </button>
        )}
      </div>
      <p class="soft small">{subtitle}</p>
      {children}
      <Help topics={[help]} />
    </section>
  );
}
