import { isProblem } from '../../core/answer/problem.ts';
import { resultOf } from '../../core/answer/result-of.ts';
import { bundleTally } from '../../core/lumber/bundle-tally.ts';
import type { Board } from '../../store/records/board.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { Amount } from '../../ui/amount.tsx';
import { Fold } from '../../ui/fold.tsx';
import { Reason } from '../../ui/reason.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { ReadingEntry } from './reading-entry.tsx';

/** What is asked less often of a delivery: its tally as an export bundle, one moisture reading for all its boards. */
export function DeliveryMore({ delivery, boards }: { delivery: Delivery; boards: readonly Board[] }) {
  const bundle = bundleTally(boards);
  return (
    <section class="card" aria-label="More about the delivery">
      <Fold label="As an export bundle">
        {isProblem(bundle) ? (
          <Reason of={bundle} />
        ) : (
          <>
            <p>
              <b>
                <Amount of={resultOf(bundle)} />
              </b>
              , widths to the whole inch.
            </p>
            <ShowWorking of={bundle.working} />
          </>
        )}
      </Fold>
      <Fold label="One reading for all its boards">
        <ReadingEntry boards={boards} formKey={delivery.id} />
      </Fold>
    </section>
  );
}
