import type { Requirement } from '../../core/part/requirement';
import type { PartEntry } from '../../entry/part-entry';
import { RequirementFrame } from '../../widgets/requirement-frame';

interface AskedFrameProps {
  readonly requirement: Requirement;
  /** What was typed of the part, with the tolerances as they are written. */
  readonly entry: Pick<PartEntry, 'requirements' | 'datum'>;
}

/** A requirement as the drawing writes it, its tolerance as typed. */
export function AskedFrame({ requirement: { id, face, datum }, entry }: AskedFrameProps) {
  const typed = entry.requirements.find((requirement) => requirement.id === id)?.tolerance;
  return (
    <RequirementFrame
      face={face}
      datum={datum}
      tolerance={typed === undefined ? '' : `${typed.text.trim()} ${typed.unit}`}
      datumA={entry.datum}
    />
  );
}
