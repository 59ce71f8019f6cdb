import type { Kind } from '../store/records/kinds.ts';
import { remove } from '../store/remove.ts';
import { timers } from '../store/timers.ts';
import { offerUndo } from './notices.ts';

/** Deletes a run with its timers and offers the way back; what fails the shell keeps and shows. */
export async function removeRun(kind: Kind, id: string, said: string): Promise<void> {
  try {
    const hanging = await timers.where('for.id', id);
    const { undo } = await remove([{ kind, id }, ...hanging.map((timer) => ({ kind: timers.kind, id: timer.id }))]);
    offerUndo(said, undo);
  } catch {
    // Not deleted.
  }
}
