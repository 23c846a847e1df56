import { FileRefused } from '../file-refused';
import { TABLE_TOO_LONG } from './read-csv';

/** Bytes of the longest table that is read, in whatever letters. */
const MOST = 8_000_000;

/**
 * The text of a table in the letters that spreadsheets save: UTF-8, UTF-16 with its mark, or those of
 * Windows, in which a lone byte is the µ of a heading.
 *
 * @throws FileRefused where it is longer than any table of readings, before any of it is read.
 */
export async function tableText(file: Blob): Promise<string> {
  if (file.size > MOST) throw new FileRefused(TABLE_TOO_LONG);
  const bytes = new Uint8Array(await file.arrayBuffer());
  const mark = (bytes[0] ?? 0) * 256 + (bytes[1] ?? 0);
  if (mark === 0xfffe) return decoded(bytes, 'utf-16le');
  if (mark === 0xfeff) return decoded(bytes, 'utf-16be');
  try {
    return decoded(bytes, 'utf-8');
  } catch {
    return decoded(bytes, 'windows-1252');
  }
}

/** A letter that is cut through at the end is left out: it may be the end of a sample. */
function decoded(bytes: Uint8Array, letters: string): string {
  return new TextDecoder(letters, { fatal: letters === 'utf-8' }).decode(bytes, { stream: true });
}
