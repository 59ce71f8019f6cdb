import type { Kind } from './records/kinds.ts';

const listeners = new Map<() => void, readonly Kind[]>();
let channel: BroadcastChannel | undefined;

function tabs(): BroadcastChannel {
  if (channel) return channel;
  channel = new BroadcastChannel('boardwright-changes');
  channel.onmessage = ({ data }: MessageEvent<{ kind: Kind }>) => tell(data.kind);
  return channel;
}

function tell(kind: Kind): void {
  for (const [listener, kinds] of listeners) if (kinds.includes(kind)) listener();
}

/** Calls the listener after every write to one of these kinds, in this tab or another. Returns how to stop. */
export function onChange(kinds: readonly Kind[], listener: () => void): () => void {
  tabs();
  listeners.set(listener, kinds);
  return () => listeners.delete(listener);
}

/** Says that records of a kind were written; called once they are really in the database. */
export function announce(kind: Kind): void {
  tell(kind);
  tabs().postMessage({ kind });
}
