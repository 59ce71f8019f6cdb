import { type ApplyOutcome, applyBackup } from './apply-backup.ts';
import { readBackup } from './read-backup.ts';
import { snapshotText } from './snapshots.ts';

/** Puts a snapshot in place of everything; what was there before is kept as a snapshot in turn. */
export async function restoreSnapshot(id: string): Promise<ApplyOutcome> {
  const outcome = await readBackup((await snapshotText(id)) ?? '');
  if (outcome.kind !== 'read') return { kind: 'failed', error: new Error(outcome.kind) };
  return applyBackup(outcome.contents, 'replace', { damaged: outcome.damaged });
}
