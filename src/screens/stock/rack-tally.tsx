import { isProblem } from '../../core/answer/problem.ts';
import { boardFeet, m3 } from '../../core/answer/quantity.ts';
import { tally } from '../../core/lumber/tally.ts';
import type { Board } from '../../store/records/board.ts';
import { Amount } from '../../ui/amount.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';

/** How much wood these boards hold: by the trade's rule, exactly, and in cubic metres. */
export function RackTally({ boards, name }: { boards: readonly Board[]; name: string }) {
  const sums = tally(boards);
  if (isProblem(sums)) {
    return (
      <div class="answer">
        <Say phrase={sums.message} />
      </div>
    );
  }
  return (
    <section class="answer" aria-label="Tally" aria-live="polite">
      <span class="soft">
        {boards.length} {boards.length === 1 ? 'board' : 'boards'} {name}
      </span>
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
