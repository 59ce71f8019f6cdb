import type { Kind } from './records/kinds.ts';

/** What was written. No ids means that the whole kind may have changed. */
export interface Changed {
  readonly kind: Kind;
  readonly ids: readonly string[];
  /** It happened in another tab. */
  readonly elsewhere: boolean;
}

type Listener = (changed: Changed) => void;

const listeners = new Map<Kind, Set<Listener>>();
let channel: BroadcastChannel | undefined;

function tabs(): BroadcastChannel | undefined {
  if (channel || typeof BroadcastChannel === 'undefined') return channel;
  channel = new BroadcastChannel('boardwright-changes');
  channel.onmessage = ({ data }: MessageEvent<{ kind: Kind; ids: string[] }>) => tell({ ...data, elsewhere: true });
  return channel;
}

function tell(changed: Changed): void {
  for (const listener of listeners.get(changed.kind) ?? []) listener(changed);
}

/** Calls the listener after every write to one of these kinds, in this tab or another. Returns how to stop. */
export function onChange(kinds: Kind | readonly Kind[], listener: Listener): () => void {
  tabs();
  const wanted = typeof kinds === 'string' ? [kinds] : kinds;
  for (const kind of wanted) listeners.set(kind, (listeners.get(kind) ?? new Set()).add(listener));
  return () => {
    for (const kind of wanted) listeners.get(kind)?.delete(listener);
  };
}

/** Says that records were written; called once they are really in the database. */
export function announce(kind: Kind, ids: readonly string[]): void {
  tell({ kind, ids, elsewhere: false });
  tabs()?.postMessage({ kind, ids });
}
