import { scaledEstimate } from '../../core/adjustment/scaled-estimate';
import type { Finding } from '../../core/inspection/findings';
import type { SidesAnswer } from '../../core/inspection/sides';
import type { Part } from '../../core/part/part';
import { expanded } from '../../core/statistics/coverage';
import type { PartEntry } from '../../entry/part-entry';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { pairName } from '../../words/faces';
import { taperInWords } from '../../words/leans';
import { deviation as shown, size, withDoubt } from '../../words/numbers';
import { StandingBlock } from '../plate/standing-block';
import { AskedFrame } from './asked-frame';
import { AssumptionWarning } from './assumption-warning';
import { NotFixed } from './not-fixed';
import { SideFacts } from './side-facts';
import { Working } from './working';

interface SidesSheetProps {
  readonly sides: SidesAnswer;
  /** What the drawing asks of these sides and the readings do not fix. */
  readonly unfixed: readonly Finding[];
  readonly entry: PartEntry;
  readonly part: Part | undefined;
  readonly inspection: InspectionRecord;
}

/** Two opposite faces on their base: how far out of square, which way, and the taper between them. */
export function SidesSheet({ sides, unfixed, entry, part, inspection }: SidesSheetProps) {
  const { faces, base, height, outOfSquare } = sides;
  const heading = `${pairName(faces)} on the ${base}`;
  const fixed = outOfSquare[0] !== undefined && outOfSquare[1] !== undefined;
  return (
    <section class="sheet" aria-label={heading}>
      <h3>{heading.charAt(0).toUpperCase() + heading.slice(1)}</h3>
      {unfixed.map(({ requirement }) => (
        <AskedFrame key={requirement.id} requirement={requirement} entry={entry} />
      ))}
      {!fixed && (
        <NotFixed
          remedies={sides.remedies}
          requirement={{ face: faces[0], datum: base }}
          inspection={inspection}
        />
      )}
      {fixed && part !== undefined && (
        <StandingBlock part={part} faces={faces} base={base} sides={sides} />
      )}
      {sides.assumed && <AssumptionWarning />}
      {faces.map((face, index) => {
        const estimate = outOfSquare[index];
        if (estimate === undefined) return null;
        return (
          <SideFacts
            key={face}
            face={face}
            base={base}
            height={height}
            estimate={estimate}
            inspection={inspection}
          />
        );
      })}
      {fixed && <Comparison sides={sides} inspection={inspection} />}
    </section>
  );
}

/** What the two sides say of each other. */
function Comparison({ sides, inspection }: Pick<SidesSheetProps, 'sides' | 'inspection'>) {
  const { base, difference, taper, reach, height } = sides;
  const { deviation, size: sizeUnit } = shop.value.units;
  const growth = taper && scaledEstimate(taper, height);
  return (
    <>
      {difference !== undefined && (
        <div class="stack">
          <dl class="facts">
            <dt>Total difference between the sides, over {size(reach, sizeUnit)}</dt>
            <dd>{withDoubt(difference.value, expanded(difference), deviation)}</dd>
            <dt>Half of it, per side, over {size(reach, sizeUnit)}</dt>
            <dd>{shown(difference.value / 2, deviation)}</dd>
          </dl>
          <Working result={difference} what="The difference" inspection={inspection} />
        </div>
      )}
      {taper !== undefined && growth !== undefined && (
        <div class="stack">
          <dl class="facts">
            <dt>
              {taperInWords(base, taper)}, over {size(height, sizeUnit)}
            </dt>
            <dd>{withDoubt(Math.abs(growth.value), expanded(growth), deviation)}</dd>
          </dl>
          <Working
            result={growth}
            what="The growth of the thickness going up"
            inspection={inspection}
          />
        </div>
      )}
    </>
  );
}
