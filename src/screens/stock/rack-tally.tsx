import { resultOf } from '../../core/answer/result-of.ts';
import type { Sums } from '../../core/lumber/tally.ts';
import { Amount } from '../../ui/amount.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';

interface Props {
  sums: Sums;
  /** Which boards these are. */
  of?: string;
}

/** How much wood boards hold: by the trade's rule, exactly, and in cubic metres. */
export function RackTally({ sums, of }: Props) {
  return (
    <section class="answer" aria-label="Tally" aria-live="polite">
      {of && <span class="soft">{of}</span>}
      <span class="figure">
        <Amount of={resultOf(sums.boardFeet)} />
      </span>
      <span class="soft">
        by the hardwood rule; exactly <Amount of={resultOf(sums.exactBoardFeet)} />,{' '}
        <Amount of={resultOf(sums.cubicMetres)} />
      </span>
      <div class="workings">
        <ShowWorking of={sums.boardFeet.working} label="By the rule" />
        <ShowWorking of={sums.exactBoardFeet.working} label="Exactly" />
      </div>
    </section>
  );
}
