import { useEffect } from 'preact/hooks';
import { begunMerge, lastBackup, lookForBegunMerge } from '../state/backups';
import { loading, now, parts } from '../state/shop';
import { daysAgo } from '../words/merging';
import { to } from './paths';

/** The way to backup and files, with the age of the last backup, or with the merge that was cut short. */
export function BackupReminder() {
  const mine = [...parts.value.values()].some(({ example }) => !example);
  const age =
    lastBackup.value === undefined
      ? 'never made on this device'
      : `last one ${daysAgo(lastBackup.value, now())}`;
  const isOpen = loading.value === 'ready';
  useEffect(() => {
    if (isOpen) void lookForBegunMerge();
  }, [isOpen]);
  if (begunMerge.value !== undefined) {
    return (
      <a class="button button-wide" href={to.files()}>
        Backup and files: a merge is not finished
      </a>
    );
  }
  return (
    <a class="button button-wide" href={to.files()}>
      Backup and files{mine && `: ${age}`}
    </a>
  );
}
