/** A day as makers note it: `Nov 26`, with its year when that isn't this one. Takes an instant, or a day such as `2026-11-26`. */
export function day(at: number | string, now = Date.now()): string {
  const then = new Date(typeof at === 'number' ? at : `${at}T00:00`);
  const year = then.getFullYear() === new Date(now).getFullYear() ? undefined : 'numeric';
  return then.toLocaleDateString(undefined, { day: 'numeric', month: 'short', year });
}
