import type { ComponentChildren } from 'preact';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { Length } from '../../ui/length.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { Trouble } from '../../ui/trouble.tsx';

interface Props<T> {
  of: Outcome<Worked<T>>;
  /** Fields whose problems stand at their own entries. */
  entries: readonly string[];
  /** The one number to work to, and its name. */
  main(value: T): readonly [name: string, mm: number];
  /** What else to know. */
  rest(value: T): readonly (readonly [name: string, mm: number])[];
  children?: ComponentChildren;
}

/** One length to work to, large, and the lengths around it. */
export function AnswerList<T>({ of, entries, main, rest, children }: Props<T>) {
  if (isProblem(of)) return <Trouble of={entries.includes(of.field) ? undefined : of} />;
  const [name, mm] = main(of.value);
  return (
    <div class="answer" aria-live="polite">
      <span class="soft">{name}</span>
      <span class="figure">
        <Length mm={mm} />
      </span>
      <dl class="facts">
        {rest(of.value).map(([said, length]) => [
          <dt>{said}</dt>,
          <dd>
            <Length mm={length} />
          </dd>,
        ])}
      </dl>
      {children}
      <ShowWorking of={of.working} />
    </div>
  );
}
