/*
 * A backup is one JSON file, compressed with gzip: an object that says what it is, then the records,
 * then how many they were. Each record stands on a line of its own, so that a file of any size is
 * written and read line by line and no more than one record is ever held:
 *
 *   {"highedge":"backup","version":1,"made":"2024-03-05T14:07:00.000Z","app":"0.1.0","records":[
 *   {"format":2,"kind":"part",…},
 *   {"format":2,"kind":"inspection",…}
 *   ],"count":2}
 */

/** Raised when the file around the records changes; the records have formats of their own. */
export const BACKUP_VERSION = 1;

export const ENDING = '.highedge';

/** What a backup says of itself. */
export interface BackupHead {
  /** When it was made, ISO 8601 in UTC. */
  readonly made: string;
  /** Which version of the app wrote it. */
  readonly app: string;
}

/** The first line. */
export function headLine({ made, app }: BackupHead): string {
  const head = JSON.stringify({ highedge: 'backup', version: BACKUP_VERSION, made, app });
  return `${head.slice(0, -1)},"records":[\n`;
}

/** The last line. */
export function endLine(count: number): string {
  return `],"count":${count}}\n`;
}
