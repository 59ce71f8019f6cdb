import { isProblem } from '../../core/answer/problem.ts';
import { percent, quantity } from '../../core/answer/quantity.ts';
import { boardWeight } from '../../core/lumber/board-weight.ts';
import type { Board } from '../../store/records/board.ts';
import { speciesById } from '../../tables/species.ts';
import { Amount } from '../../ui/amount.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { correctedReadings } from './corrected-readings.ts';

/** Taken where no reading is there: dried and kept under a roof. */
const assumedMoisture = 12;

/** What the board weighs, and whether one person should lift it. */
export function BoardWeight({ board, cubicMetres }: { board: Board; cubicMetres: number }) {
  const gravity = speciesById(board.species)?.specificGravity;
  const latest = correctedReadings(board.readings ?? []).at(-1)?.percent;
  const moisture = latest ?? assumedMoisture;
  const found =
    gravity && boardWeight({ specificGravity: gravity.value, source: gravity.source, moisture }, cubicMetres);
  return (
    <section class="card" aria-label="Weight">
      <h2>Weight</h2>
      {!found && <p class="soft">The table has no specific gravity for this wood.</p>}
      {found && isProblem(found) && (
        <p class="soft">
          <Say phrase={found.message} />
        </p>
      )}
      {found && !isProblem(found) && (
        <>
          <p>
            About{' '}
            <b>
              <Amount of={quantity(found.kilograms.value, 'kilograms')} />
            </b>{' '}
            at <Amount of={percent(moisture)} /> moisture{latest === undefined && ', which is assumed'}.
          </p>
          {found.caution && (
            <p class="trouble">
              <Say phrase={found.caution} />
            </p>
          )}
          <ShowWorking of={found.kilograms.working} />
        </>
      )}
    </section>
  );
}
