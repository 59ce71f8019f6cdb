import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

interface Props<T> {
  items: readonly T[];
  label: string;
  children(item: T): ComponentChildren;
}

/** Height of every row, as the style has it: nothing is measured before it is drawn. */
const rowHeight = 3.75;
/** Rows kept ready above and below what is in sight. */
const spare = 8;

/** A list of any length, of rows of one height: only what is in sight (and a little more) is on the page. */
export function LongList<T>({ items, label, children }: Props<T>) {
  const list = useRef<HTMLUListElement>(null);
  const [{ from, to }, setAt] = useState({ from: 0, to: 2 * spare });
  useEffect(() => {
    const look = () => {
      if (!list.current) return;
      const { top, height } = list.current.getBoundingClientRect();
      const perRow = height / items.length || 1;
      const first = Math.min(Math.max(0, Math.floor(-top / perRow) - spare), Math.max(0, items.length - 1));
      const last = Math.max(first + 2 * spare, Math.ceil((innerHeight - top) / perRow) + spare);
      setAt((now) => (now.from === first && now.to === last ? now : { from: first, to: last }));
    };
    look();
    // The browser tells of scrolling once a frame.
    addEventListener('scroll', look, { passive: true });
    addEventListener('resize', look);
    return () => {
      removeEventListener('scroll', look);
      removeEventListener('resize', look);
    };
  }, [items]);

  const shown = items.slice(from, to);
  const room = (rows: number) => `${Math.max(0, rows) * rowHeight}rem`;
  return (
    <ul
      ref={list}
      class="long-list"
      aria-label={label}
      style={{ paddingTop: room(Math.min(from, items.length)), paddingBottom: room(items.length - to) }}
    >
      {shown.map((item, n) => (
        // A row that leaves on one side comes back on the other with the next item: changing a text costs less than a new row.
        <li key={(from + n) % (to - from)} aria-setsize={items.length} aria-posinset={from + n + 1}>
          {children(item)}
        </li>
      ))}
    </ul>
  );
}
