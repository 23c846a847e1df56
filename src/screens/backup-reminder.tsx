import { lastBackup } from '../state/backups';
import { now, parts } from '../state/shop';
import { daysAgo } from '../words/merging';
import { to } from './paths';

/** The way to backup and files, with the age of the last backup. */
export function BackupReminder() {
  const mine = [...parts.value.values()].some(({ example }) => !example);
  const age =
    lastBackup.value === undefined
      ? 'never made on this device'
      : `last one ${daysAgo(lastBackup.value, now())}`;
  return (
    <a class="button button-wide" href={to.files()}>
      Backup and files{mine && `: ${age}`}
    </a>
  );
}
