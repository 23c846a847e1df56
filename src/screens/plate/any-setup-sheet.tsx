import type { OverFaceSetup, SetupEntry } from '../../entry/setup-entry';
import { AssumptionSheet } from './assumption-sheet';
import { ColumnSheet } from './column-sheet';
import { MicrometerSheet } from './micrometer-sheet';
import { NoseComparatorSheet } from './nose-comparator-sheet';
import { OverFaceSheet } from './over-face-sheet';
import type { SetupSheetProps } from './setup-sheet';

type AnySetupSheetProps = Omit<SetupSheetProps<SetupEntry>, 'onChange'> & {
  readonly seating: number;
  readonly onAgain: ((one: OverFaceSetup) => void) | undefined;
  readonly onChange: <S extends SetupEntry>(setup: S, change: (now: S) => S) => void;
};

/** The sheet of one setup, by its way of reading. */
export function AnySetupSheet({ seating, onAgain, onChange, ...props }: AnySetupSheetProps) {
  const { setup } = props;
  const changes = <S extends SetupEntry>(one: S) => ({
    setup: one,
    onChange: (change: (now: S) => S) => onChange(one, change),
  });
  switch (setup.kind) {
    case 'nose comparator':
      return <NoseComparatorSheet {...props} {...changes(setup)} />;
    case 'column':
      return <ColumnSheet {...props} {...changes(setup)} />;
    case 'micrometer':
      return <MicrometerSheet {...props} {...changes(setup)} />;
    case 'over the top':
    case 'face map':
      return (
        <OverFaceSheet
          {...props}
          {...changes(setup)}
          seating={seating}
          onAgain={onAgain && (() => onAgain(setup))}
        />
      );
    case 'assumed parallel':
      return <AssumptionSheet {...props} {...changes(setup)} />;
  }
}
