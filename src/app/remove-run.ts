import type { Kind } from '../store/records/kinds.ts';
import { remove } from '../store/remove.ts';
import { timers } from '../store/timers.ts';
import { undoable } from './notices.ts';

async function withTimers(kind: Kind, id: string) {
  const hanging = await timers.where('for.id', id);
  return remove([{ kind, id }, ...hanging.map((timer) => ({ kind: timers.kind, id: timer.id }))]);
}

/** Deletes a run with its timers and offers the way back. */
export const removeRun = (kind: Kind, id: string, said: string): Promise<void> => undoable(withTimers(kind, id), said);
