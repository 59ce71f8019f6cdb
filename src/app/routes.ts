import { signal } from '../ui/signal.ts';
import { leaveNotices } from './notices.ts';

/**
 * Where the app stands: `#/mill/abc` is screen `mill` with the record `abc`. The hash is used since a static host at any
 * sub-path answers it without rewriting addresses.
 */
export interface Route {
  readonly screen: string;
  readonly id: string;
}

export function readRoute(hash: string): Route {
  const [screen = '', id = ''] = hash.replace(/^#\/?/, '').split('/').map(decodePart);
  return { screen: screen === '' ? 'bench' : screen, id };
}

/** A hash typed by hand may hold a broken escape; it then stands for itself. */
function decodePart(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

export function routeTo(screen: string, id = ''): string {
  return id === '' ? `#/${screen}` : `#/${screen}/${encodeURIComponent(id)}`;
}

export const route = signal<Route>(readRoute(''));

let sent = false;

/** Sends the maker on, after what was done: what is said of that stays in sight. */
export function go(screen: string, id = ''): void {
  const before = location.hash;
  location.hash = routeTo(screen, id);
  sent = location.hash !== before;
}

export function followRoute(): void {
  const read = () => {
    route.value = readRoute(location.hash);
    if (!sent) leaveNotices();
    sent = false;
  };
  addEventListener('hashchange', read);
  // A tap on a link is answered at once; the browser would say so only after what else is waiting.
  addEventListener('click', (event) => {
    const link = event.target instanceof Element ? event.target.closest<HTMLAnchorElement>('a[href^="#/"]') : null;
    if (!link || event.defaultPrevented || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    location.hash = link.hash;
    read();
  });
  read();
}
