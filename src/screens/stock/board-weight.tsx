import { isProblem } from '../../core/answer/problem.ts';
import { percent } from '../../core/answer/quantity.ts';
import { resultOf } from '../../core/answer/result-of.ts';
import { boardWeight } from '../../core/lumber/board-weight.ts';
import { cubicMetresOf } from '../../core/lumber/exact-volume.ts';
import type { Board } from '../../store/records/board.ts';
import { Amount } from '../../ui/amount.tsx';
import { Card } from '../../ui/card.tsx';
import { Reason } from '../../ui/reason.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { woodById } from '../../ui/wood-by-id.ts';
import { latestReading } from './corrected-readings.ts';

/** Taken where no reading is there: dried and kept under a roof. */
const assumedMoisture = 12;

/** What the board weighs, and whether one person should lift it. */
export const BoardWeight = ({ board }: { board: Board }) => (
  <Card title="Weight">
    <Weight board={board} />
  </Card>
);

function Weight({ board }: { board: Board }) {
  const gravity = woodById(board.species)?.specificGravity;
  if (!gravity) return <p class="soft">The table has no specific gravity for this wood.</p>;
  const latest = latestReading(board)?.percent;
  const moisture = latest ?? assumedMoisture;
  const found = boardWeight({ specificGravity: gravity.value, source: gravity.source, moisture }, cubicMetresOf(board));
  if (isProblem(found)) return <Reason of={found} />;
  return (
    <>
      <p>
        About{' '}
        <b>
          <Amount of={resultOf(found.kilograms)} />
        </b>{' '}
        at <Amount of={percent(moisture)} /> moisture{latest === undefined && ', assumed'}.
      </p>
      {found.caution && (
        <p class="trouble">
          <Say phrase={found.caution} />
        </p>
      )}
      <ShowWorking of={found.kilograms.working} />
    </>
  );
}
