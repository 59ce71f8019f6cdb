/** Runs `work` once the page has nothing else to do, and at the latest after `latest` milliseconds. */
export function whenQuiet(work: () => void, latest = 1_000): void {
  if ('requestIdleCallback' in window) requestIdleCallback(work, { timeout: latest });
  else setTimeout(work, Math.min(latest, 200));
}
