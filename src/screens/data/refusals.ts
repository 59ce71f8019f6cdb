import type { ReadOutcome } from '../../store/backup/read-backup.ts';

/** Why a file isn't taken in, and what to do. */
export const refusals: Readonly<Record<Exclude<ReadOutcome['kind'], 'read'>, string>> = {
  tooBig: 'This file is larger than any backup of this app.',
  notJson: 'This is not a backup: it is not even JSON. Pick the file that the app made.',
  notBackup: 'This is a JSON file, but not a backup of this app.',
  newer: 'This backup comes from a newer version of the app. Update the app here first.',
  notConverted: 'This backup is from an old version and could not be brought up to date.',
};
