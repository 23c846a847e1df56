import { useState } from 'preact/hooks';
import './choose-file.css';

interface ChooseFileProps {
  readonly label: string;
  readonly onFile: (file: File) => void;
}

/** A field to choose a file with, or to drop one on. Any name will do: what is in it is looked at. */
export function ChooseFile({ label, onFile }: ChooseFileProps) {
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
