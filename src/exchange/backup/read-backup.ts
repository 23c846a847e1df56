import { FileRefused } from '../file-refused';
import { type Checked, checkRecord } from '../shape/check-record';
import { BACKUP_VERSION, type BackupHead } from './format';
import { linesOf, type UnpackLimits } from './lines';

/** A record of a backup, or what is wrong with it, and the line that it stands on. */
export type BackupLine = Checked & { readonly line: number };

/** Lines that may be bad before the first good one. */
const MOST_BAD = 1000;

const NO_BACKUP = 'It is no backup of Highedge';

/**
 * Reads a backup line by line. Each record is looked over by itself: one that is damaged does not
 * keep the others from being read.
 *
 * @throws FileRefused where the file as a whole is no backup, damaged, cut short, or from a newer version.
 */
export async function* readBackup(
  file: Blob,
  limits?: Partial<UnpackLimits>,
): AsyncGenerator<BackupLine> {
  let line = 0;
  let count = 0;
  let ended = false;
  let anyGood = false;
  for await (const text of linesOf(file, limits)) {
    line += 1;
    if (ended) throw new FileRefused('Something follows after its end');
    if (line === 1) readHead(text);
    else if (text.startsWith(']')) {
      ended = true;
      if (text.trimEnd() !== `],"count":${count}}`) {
        throw new FileRefused(`It says another number of records than the ${count} that it holds`);
      }
    } else {
      count += 1;
      const checked = checkLine(text);
      anyGood ||= checked.ok;
      if (!anyGood && count > MOST_BAD) throw new FileRefused('None of its records can be read');
      yield { line, ...checked };
    }
  }
  if (!ended) throw new FileRefused(line === 0 ? 'It is empty' : 'It is cut short');
}

/** What the first line says, or an error where it is none. */
function readHead(text: string): BackupHead {
  const head = parsed(`${text.trimEnd()}]}`);
  const { highedge, version, made, app } = (head ?? {}) as Record<string, unknown>;
  if (highedge !== 'backup' || typeof version !== 'number') throw new FileRefused(NO_BACKUP);
  if (version > BACKUP_VERSION) {
    throw new FileRefused('It is from a newer version of Highedge: update the app first');
  }
  if (version !== BACKUP_VERSION || typeof made !== 'string' || typeof app !== 'string') {
    throw new FileRefused(NO_BACKUP);
  }
  return { made, app };
}

/** The head of a backup. */
export async function readBackupHead(
  file: Blob,
  limits?: Partial<UnpackLimits>,
): Promise<BackupHead> {
  for await (const text of linesOf(file, limits)) return readHead(text);
  throw new FileRefused('It is empty');
}

function checkLine(text: string): Checked {
  const value = parsed(text.replace(/,?\r?$/, ''));
  if (value === undefined) return { ok: false, message: 'It is damaged: this is no JSON' };
  return checkRecord(value);
}

/** Undefined where the text is no JSON. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
