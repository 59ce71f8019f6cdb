import type { Problem } from '../../core/answer/problem.ts';
import { Trouble } from '../../ui/trouble.tsx';

/** What is wrong, and where a wood's missing figures are added. */
export function WoodTrouble({ of }: { of: Problem }) {
  return (
    <>
      <Trouble of={of} />
      {of.field.endsWith('species') && (
        <a class="button" href="#/wood">
          Add its figures
        </a>
      )}
    </>
  );
}
