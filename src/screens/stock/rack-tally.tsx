import { resultOf } from '../../core/answer/result-of.ts';
import type { Sums } from '../../core/lumber/tally.ts';
import { Amount } from '../../ui/amount.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';

interface Props {
  sums: Sums;
  /** Which boards these are. */
  of?: string;
}

/** How much wood boards hold: by the trade's rule, exactly, and in cubic metres; first what the maker buys by. */
export function RackTally({ sums, of }: Props) {
  const [rule, exactly, cubicMetres] = [sums.boardFeet, sums.exactBoardFeet, sums.cubicMetres].map((sum) => (
    <Amount of={resultOf(sum)} />
  ));
  const metric = units.value.unit === 'mm';
  return (
    <section class="answer" aria-label="Tally" aria-live="polite">
      {of && <span class="soft">{of}</span>}
      <span class="figure">{metric ? cubicMetres : rule}</span>
      <span class="soft">
        {metric && rule} by the hardwood rule; exactly {exactly}
        {!metric && <>, {cubicMetres}</>}
      </span>
      <div class="workings">
        <ShowWorking of={sums.boardFeet.working} label="By the rule" />
        <ShowWorking of={sums.exactBoardFeet.working} label="Exactly" />
      </div>
    </section>
  );
}
