import { seconds } from '../../core/answer/quantity.ts';
import type { Range } from '../../core/answer/range.ts';
import { roughDuration } from '../../core/answer/rough-duration.ts';
import { Amount } from '../../ui/amount.tsx';

/** How long at least and at most, to two figures: what rests on the air or on a label is known no better. */
export function TimeRange({ of: { least, most } }: { of: Range }) {
  return (
    <>
      <Amount of={seconds(roughDuration(least))} />
      {roughDuration(most) > roughDuration(least) && (
        <>
          {' to '}
          <Amount of={seconds(roughDuration(most))} />
        </>
      )}
    </>
  );
}
