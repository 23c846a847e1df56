import { useState } from 'preact/hooks';
import './choose-file.css';

interface ChooseFileProps {
  readonly label: string;
  /** The id of what is wrong with the file that was chosen last, where anything is. */
  readonly refused?: string | undefined;
  readonly onFile: (file: File) => void;
}

/** A field to choose a file with, or to drop one on. Any name will do: what is in it is looked at. */
export function ChooseFile({ label, refused, onFile }: ChooseFileProps) {
  const [over, setOver] = useState(false);
  return (
    <label
      class={over ? 'choose-file choose-file-over' : 'choose-file'}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        const file = event.dataTransfer?.files[0];
        if (file !== undefined) onFile(file);
      }}
    >
      <span>{label}</span>
      <input
        type="file"
        aria-describedby={refused}
        onChange={(event) => {
          const { files } = event.currentTarget;
          const file = files?.[0];
          if (file !== undefined) onFile(file);
          // The same file may be chosen again.
          event.currentTarget.value = '';
        }}
      />
    </label>
  );
}
