import { isProblem } from '../../core/answer/problem.ts';
import { boardFeet, m3 } from '../../core/answer/quantity.ts';
import { tally } from '../../core/lumber/tally.ts';
import type { Board } from '../../store/records/board.ts';
import { Amount } from '../../ui/amount.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import type { Sums } from './rack-amounts.ts';

/** How much wood some boards hold: by the trade's rule, exactly, and in cubic metres. Without sums, they are still counted. */
export function RackTally({ count, name, sums }: { count: number; name: string; sums: Sums | undefined }) {
  return (
    <section class="answer" aria-label="Tally" aria-live="polite">
      <span class="soft">
        {count} {count === 1 ? 'board' : 'boards'} {name}
      </span>
      {sums ? (
        <>
          <span class="figure">
            <Amount of={boardFeet(sums.boardFeet.value)} />
          </span>
          <span class="soft">
            by the hardwood rule; exactly <Amount of={boardFeet(sums.exactBoardFeet.value)} />,{' '}
            <Amount of={m3(sums.cubicMetres.value)} />
          </span>
          <div class="workings">
            <ShowWorking of={sums.boardFeet.working} label="By the rule" />
            <ShowWorking of={sums.exactBoardFeet.working} label="Exact board feet" />
            <ShowWorking of={sums.cubicMetres.working} label="Cubic metres" />
          </div>
        </>
      ) : (
        <span class="figure words">Adding up</span>
      )}
    </section>
  );
}

/** The running sum in a few words, to stand in sight of the entries. */
export function SoFar({ boards }: { boards: readonly Board[] }) {
  const sums = tally(boards);
  if (isProblem(sums) || boards.length === 0) return null;
  return (
    <>
      {' '}
      {boards.length} so far, <Amount of={boardFeet(sums.boardFeet.value)} />.
    </>
  );
}
