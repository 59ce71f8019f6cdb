import type { Problem } from '../core/answer/problem.ts';
import { Say } from './say.tsx';

/** What is wrong with one entry, said at that entry. */
export function Trouble({ of, id }: { of: Problem | undefined; id?: string }) {
  return (
    <p class={of ? 'trouble' : 'hidden-visually'} id={id} role={of ? 'alert' : undefined}>
      {of && <Say phrase={of.message} />}
    </p>
  );
}
