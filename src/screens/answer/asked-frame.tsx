import type { AnyRequirement } from '../../core/part/requirement';
import { linesOf, type PartEntry } from '../../entry/part-entry';
import { RequirementFrame } from '../../widgets/requirement-frame';
import { asTyped } from '../../words/read-as';

interface AskedFrameProps {
  readonly requirement: AnyRequirement;
  /** What was typed of the part, with the tolerances as they are written. */
  readonly entry: Pick<PartEntry, 'requirements' | 'flatness' | 'datum'>;
}

/** A requirement as the drawing writes it, its tolerance as typed. */
export function AskedFrame({ requirement: { id, face, datum }, entry }: AskedFrameProps) {
  const typed = linesOf(entry).find((line) => line.id === id)?.tolerance;
  return (
    <RequirementFrame
      face={face}
      datum={datum}
      tolerance={typed === undefined ? '' : asTyped(typed)}
      datumA={entry.datum}
    />
  );
}
