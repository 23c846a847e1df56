import { FileRefused } from '../file-refused';
import { TABLE_TOO_LONG } from './read-csv';

/** Bytes of the longest table that is read, in whatever letters. */
const MOST = 64_000_000;

/** Bytes that are made letters at a time. */
const PIECE = 1_000_000;

/**
 * The text of a table in the letters that spreadsheets save: UTF-8, UTF-16 with its mark, or those of
 * Windows, in which a lone byte is the µ of a heading.
 *
 * @throws FileRefused where it is longer than any table of readings, before any of it is read.
 */
export async function tableText(file: Blob): Promise<string> {
  if (file.size > MOST) throw new FileRefused(TABLE_TOO_LONG);
  const bytes = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  const mark = (bytes[0] ?? 0) * 256 + (bytes[1] ?? 0);
  if (mark === 0xfffe) return decoded(file, 'utf-16le');
  if (mark === 0xfeff) return decoded(file, 'utf-16be');
  try {
    return await decoded(file, 'utf-8');
  } catch (error) {
    if (error instanceof TypeError) return decoded(file, 'windows-1252');
    throw error;
  }
}

/** A letter that is cut through at the end is left out: it may be the end of a sample. */
async function decoded(file: Blob, letters: string): Promise<string> {
  const decoder = new TextDecoder(letters, { fatal: letters === 'utf-8' });
  let text = '';
  for (let from = 0; from < file.size; from += PIECE) {
    const bytes = await file.slice(from, from + PIECE).arrayBuffer();
    text += decoder.decode(bytes, { stream: true });
  }
  return text;
}
