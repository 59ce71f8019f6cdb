import type { ComponentChildren } from 'preact';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { mm } from '../../core/answer/quantity.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { Answer } from '../../ui/answer.tsx';
import { type Entries, useEntries } from './entries.tsx';

interface Props<K extends string, T> {
  title: string;
  /** Of the draft in which the entries are kept. */
  name: string;
  entries: Entries<K>;
  find(lengths: Readonly<Record<K, number>>): Outcome<Worked<T>>;
  /** The length to work to with its name, then what else to know; mm. */
  show(value: T): readonly [Shown, ...Shown[]];
  /** What else to say of it. */
  children?: ComponentChildren;
}

type Shown = readonly [name: string, mm: number];

/** A few lengths in, one length to work to out. */
export function LengthTask<K extends string, T>({ title, name, entries, find, show, children }: Props<K, T>) {
  const asked = useEntries(name, entries);
  if (!asked) return null;
  const found = asked.ask(find);
  const [main, ...rest] = !found || isProblem(found) ? [] : show(found.value);
  return (
    <section class="task" aria-label={title}>
      <h2>{title}</h2>
      {asked.fields(found)}
      {found && !isProblem(found) && main && (
        <Answer
          label={main[0]}
          of={mm(main[1])}
          facts={rest.map(([said, length]) => [said, mm(length)])}
          working={found.working}
        >
          {children}
        </Answer>
      )}
    </section>
  );
}
