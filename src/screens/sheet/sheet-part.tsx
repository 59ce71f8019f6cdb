import type { ComponentChildren } from 'preact';

interface Props {
  title: string;
  /** Said in one line when there is nothing to show. */
  missing: string;
  children: ComponentChildren;
}

/** One part of the sheet under its title. */
export function SheetPart({ title, missing, children }: Props) {
  return (
    <section class="sheet-part" aria-label={title}>
      <h2>{title}</h2>
      <div>{children || <p class="soft">{missing}</p>}</div>
    </section>
  );
}
