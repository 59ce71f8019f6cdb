import type { ComponentChildren } from 'preact';

interface Props {
  id: string;
  title: ComponentChildren;
  /** What a closed row tells already. */
  short: ComponentChildren;
  /** Id of the row that is open. */
  open: string | undefined;
  onOpen(id: string | undefined): void;
  children: ComponentChildren;
}

/** One row of a list of which a tap opens one. */
export function OpenRow({ id, title, short, open, onOpen, children }: Props) {
  const opened = id === open;
  return (
    <li class="part">
      <button type="button" aria-expanded={opened} onClick={() => onOpen(opened ? undefined : id)}>
        <span>
          <b>{title}</b>
          {short && <span>{short}</span>}
        </span>
      </button>
      {opened && children}
    </li>
  );
}
