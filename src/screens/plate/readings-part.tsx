import { useRef, useState } from 'preact/hooks';
import type { SidesAnswer } from '../../core/inspection/sides';
import { isLastSeating, passedOverAgain, seatingOf } from '../../entry/over-face-seatings';
import { withoutMissing } from '../../entry/problems';
import { isToRead } from '../../entry/read-with';
import { readingsBefore } from '../../entry/readings-before';
import type { SetupEntry } from '../../entry/setup-entry';
import type { Worked } from '../../state/answers';
import { facesWorked, inspectionBefore, type Link } from '../../state/chain';
import { changeSetup, changeSetups } from '../../state/plate-changes';
import { newId } from '../../state/shop';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { InTurns } from '../../widgets/in-turns';
import { Later } from '../../widgets/later';
import { GuideWhenShown } from '../example/guide-when-shown';
import { to } from '../paths';
import { AddSetup } from './add-setup';
import { AnySetupSheet } from './any-setup-sheet';
import { Finish } from './finish';
import { KitInHand } from './kit-in-hand';
import { useNewInSight } from './new-in-sight';
import { BeforeReading, SeatAgain } from './reminders';
import { SetUpOtherwise } from './set-up-otherwise';
import { UndoButton } from './undo-button';

interface ReadingsPartProps {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
  readonly worked: Worked;
  /** What happened to the part. */
  readonly links: readonly Link[];
  /** Takes the last change back. */
  readonly onTakeBack: () => void;
  /** Told once all sheets are there: they come in turns. */
  readonly onWhole: () => void;
}

/** A setup that was taken away, and where it stood. */
interface Removed {
  readonly setup: SetupEntry;
  readonly index: number;
}

/** Everything that is read at the plate, one sheet a setup. */
export function ReadingsPart(props: ReadingsPartProps) {
  const { part, inspection, worked, links, onTakeBack, onWhole } = props;
  const { setups, closed } = inspection;
  const root = useRef<HTMLDivElement>(null);
  useNewInSight(root, setups);
  const [removed, setRemoved] = useState<Removed>();
  if (worked.part === undefined && worked.silence === 'waiting') {
    return <p class="note">A moment: the sizes of the part are being worked out.</p>;
  }
  if (worked.part === undefined) {
    return (
      <p class="note note-wrong">
        The sizes of the part come first. <a href={to.drawing(part.id)}>Put them in</a>
      </p>
    );
  }
  const remove = (setup: SetupEntry, index: number) => {
    setRemoved({ setup, index });
    changeSetups(inspection, (now) => now.filter(({ id }) => id !== setup.id));
  };
  const putBack = ({ setup, index }: Removed) => {
    changeSetups(inspection, (now) => [...now.slice(0, index), setup, ...now.slice(index)]);
    setRemoved(undefined);
  };
  const { part: read, problems, answer } = worked;
  const last = inspectionBefore(inspection, links);
  const before = readingsBefore(setups, last?.setups ?? []);
  const lastTime = last && { made: last.made, worked: facesWorked(last, inspection, links) };
  // The guide stands by what it speaks of, and at the end by what was read last.
  const isReadAgain = last !== undefined && !setups.some(isToRead);
  const besideGuide = isReadAgain ? 'micrometer' : 'nose comparator';
  const guided =
    part.example && isShown(inspection, 'guide')
      ? setups.find(({ kind }) => kind === besideGuide)
      : undefined;
  return (
    <div class="plate-part" ref={root}>
      <InTurns onWhole={onWhole}>
        <KitInHand inspection={inspection}>
          <UndoButton inspection={inspection} onTakeBack={onTakeBack} />
        </KitInHand>
        <BeforeReading part={part} inspection={inspection} />
        {setups.map((setup, index) => (
          <AnySetupSheet
            key={setup.id}
            setup={setup}
            part={read}
            // What is still to be read is told by the guide, and nothing is once they are finished.
            problems={
              setup === guided || closed !== undefined ? withoutMissing(problems) : problems
            }
            before={before}
            lastTime={lastTime}
            sides={sidesOf(setup, answer?.sides ?? [])}
            beside={
              setup === guided && (
                <GuideWhenShown part={part} inspection={inspection} worked={worked} />
              )
            }
            instead={
              closed === undefined &&
              setup !== guided && <SetUpOtherwise inspection={inspection} setup={setup} />
            }
            locked={closed !== undefined}
            seating={seatingOf(setups, setup)}
            onAgain={
              isLastSeating(setups, setup)
                ? (one) => changeSetups(inspection, (now) => passedOverAgain(now, one, newId))
                : undefined
            }
            onChange={(one, change) => changeSetup(inspection, one, change)}
            onRemove={() => remove(setup, index)}
          />
        ))}
        {!part.example && <SeatAgain inspection={inspection} />}
        {removed !== undefined && (
          <p class="note" role="status">
            Removed.{' '}
            <button type="button" class="button" onClick={() => putBack(removed)}>
              Put it back
            </button>
          </p>
        )}
        <Later turns={1}>
          {closed === undefined && <AddSetup entry={part.entry} inspection={inspection} />}
          <Finish part={part} inspection={inspection} canFinish={answer !== undefined} />
        </Later>
      </InTurns>
    </div>
  );
}

/** True for a guide or a reminder while there are readings to take that it can help with. */
function isShown({ closed, dismissed }: InspectionRecord, what: string): boolean {
  return closed === undefined && !dismissed?.includes(what);
}

/** What the readings say of the pair that this setup reads. */
function sidesOf(setup: SetupEntry, sides: readonly SidesAnswer[]): SidesAnswer | undefined {
  if (setup.kind !== 'nose comparator' && setup.kind !== 'column') return undefined;
  return sides.find(({ base, faces }) => base === setup.base && faces.includes(setup.faces[0]));
}
