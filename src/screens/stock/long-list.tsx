import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';

interface Props<T> {
  items: readonly T[];
  label: string;
  children(item: T): ComponentChildren;
}

/** Rows kept ready above and below what is in sight. */
const spare = 8;
/** Until a row is measured. */
const guess = 60;

/** A list of any length, of rows of one height: only what is in sight (and a little more) is on the page. */
export function LongList<T>({ items, label, children }: Props<T>) {
  const list = useRef<HTMLUListElement>(null);
  const [height, setHeight] = useState(guess);
  const [at, setAt] = useState({ from: 0, to: 30 });

  const any = items.length > 0;
  useLayoutEffect(() => {
    const row = list.current?.querySelector('li')?.getBoundingClientRect().height;
    if (row) setHeight(row);
  }, [any]);

  useEffect(() => {
    let frame = 0;
    const look = () => {
      frame = 0;
      const top = list.current?.getBoundingClientRect().top ?? 0;
      const from = Math.max(0, Math.floor(-top / height) - spare);
      const to = Math.ceil((innerHeight - top) / height) + spare;
      setAt((now) => (now.from === from && now.to === to ? now : { from, to: Math.max(to, from + 1) }));
    };
    const ask = () => {
      frame ||= requestAnimationFrame(look);
    };
    look();
    addEventListener('scroll', ask, { passive: true });
    addEventListener('resize', ask);
    return () => {
      cancelAnimationFrame(frame);
      removeEventListener('scroll', ask);
      removeEventListener('resize', ask);
    };
  }, [height, items]);

  const from = Math.min(at.from, Math.max(0, items.length - 1));
  const shown = items.slice(from, at.to);
  const after = items.length - from - shown.length;
  const slots = Math.max(1, at.to - from);
  return (
    <ul
      ref={list}
      class="long-list"
      aria-label={label}
      style={{ paddingTop: `${from * height}px`, paddingBottom: `${after * height}px` }}
    >
      {shown.map((item, n) => (
        // A row that leaves on one side comes back on the other with the next item: changing a text costs less than a new row.
        <li key={(from + n) % slots} aria-setsize={items.length} aria-posinset={from + n + 1}>
          {children(item)}
        </li>
      ))}
    </ul>
  );
}
