import type { BackupAge } from './backup-age.ts';

const week = 7 * 24 * 60 * 60 * 1000;
/** A few records are typed in again in a minute; this many are an evening's work. */
const someWork = 10;
const muchWork = 60;

/** Whether it is time to say that work lies on this phone alone: much of it, or some of it for a week or more. */
export function backupDue({ madeAt, changed }: BackupAge, now: number): boolean {
  if (changed >= muchWork) return true;
  return changed >= someWork && (madeAt === undefined || now - madeAt >= week);
}
