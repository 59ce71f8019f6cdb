import { isProblem } from '../../core/answer/problem.ts';
import { boardFeet } from '../../core/answer/quantity.ts';
import { bundleTally } from '../../core/lumber/bundle-tally.ts';
import type { Board } from '../../store/records/board.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { Amount } from '../../ui/amount.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { ReadingEntry } from './reading-entry.tsx';

/** What is asked less often of a delivery: its tally as an export bundle, one moisture reading for all its boards. */
export function DeliveryMore({ delivery, boards }: { delivery: Delivery; boards: readonly Board[] }) {
  const bundle = bundleTally(boards);
  return (
    <section class="card" aria-label="More about the delivery">
      <details class="working">
        <summary>As an export bundle</summary>
        {isProblem(bundle) ? (
          <p class="soft">
            <Say phrase={bundle.message} />
          </p>
        ) : (
          <>
            <p>
              Tallied as a bundle:{' '}
              <b>
                <Amount of={boardFeet(bundle.boardFeet.value)} />
              </b>
              , widths to the whole inch.
            </p>
            <ShowWorking of={bundle.boardFeet.working} />
          </>
        )}
      </details>
      <details class="working">
        <summary>One moisture reading for all its boards</summary>
        <ReadingEntry boards={boards} formKey={delivery.id} />
      </details>
    </section>
  );
}
