import type { Problem } from '../core/answer/problem.ts';
import { Say } from './say.tsx';

/** Why there is no answer yet, where the answer would stand. */
export function Reason({ of }: { of: Problem }) {
  return (
    <p class="soft">
      <Say phrase={of.message} />
    </p>
  );
}
