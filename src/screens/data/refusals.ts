import type { ReadOutcome } from '../../store/backup/read-backup.ts';

/** Why a file isn't taken in, and what to do; `unread` when the phone doesn't hand it over. */
export const refusals: Readonly<Record<Exclude<ReadOutcome['kind'], 'read'> | 'unread', string>> = {
  unread: 'The phone does not let the app read this.',
  tooBig: 'This is larger than any backup of this app.',
  notJson: 'This is not a backup. Pick the file that the app made.',
  notBackup: 'This is JSON, but not a backup of this app.',
  newer: 'This is from a newer version. Update the app here first.',
  notConverted: 'This is from an old version and could not be brought up to date.',
};
