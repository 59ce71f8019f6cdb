import { type ApplyOutcome, applyBackup } from './apply-backup.ts';
import { readBackup } from './read-backup.ts';
import { snapshotText } from './snapshots.ts';

/** Puts a snapshot in place of everything; what was there before is kept as a snapshot in turn. */
export async function restoreSnapshot(id: string): Promise<ApplyOutcome> {
  const text = await snapshotText(id);
  if (text === undefined) return { kind: 'failed', error: new Error('There is no such snapshot.') };
  const outcome = await readBackup(text);
  if (outcome.kind !== 'read') return { kind: 'failed', error: new Error(`The snapshot is ${outcome.kind}.`) };
  return applyBackup(outcome.contents, 'replace', { damaged: outcome.damaged });
}
