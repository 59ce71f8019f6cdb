import { seconds } from '../../core/answer/quantity.ts';
import type { Range } from '../../core/answer/range.ts';
import { Amount } from '../../ui/amount.tsx';

/** How long at least and at most. */
export function TimeRange({ of: { least, most } }: { of: Range }) {
  return (
    <>
      <Amount of={seconds(least)} />
      {most > least && (
        <>
          {' to '}
          <Amount of={seconds(most)} />
        </>
      )}
    </>
  );
}
