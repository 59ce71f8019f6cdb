import { offerUndo } from '../../app/notices.ts';
import { celsius as inCelsius, percent as inPercent } from '../../core/answer/quantity.ts';
import type { Board } from '../../store/records/board.ts';
import { Amount } from '../../ui/amount.tsx';
import { changeBoard } from './change-board.ts';
import { withoutReading } from './without-reading.ts';

/** The readings as the meter gave them, newest first. */
export function ReadingList({ board }: { board: Board }) {
  const readings = (board.readings ?? []).toSorted((a, b) => b.at - a.at);
  if (readings.length === 0) return null;
  return (
    <details class="working">
      <summary>
        {readings.length} {readings.length === 1 ? 'reading' : 'readings'}
      </summary>
      <ul class="rows">
        {readings.map((reading) => (
          <li>
            <span>
              <Amount of={inPercent(reading.percent)} />
              {reading.celsius !== undefined && (
                <>
                  {' '}
                  at <Amount of={inCelsius(reading.celsius)} />
                </>
              )}{' '}
              <span class="soft small">{new Date(reading.at).toLocaleDateString()}</span>
            </span>
            <button
              type="button"
              class="button"
              onClick={() => {
                changeBoard(board.id, (now) => withoutReading(now, reading));
                offerUndo('The reading is gone.', () =>
                  changeBoard(board.id, (now) => ({ ...now, readings: [...(now.readings ?? []), reading] })),
                );
              }}
            >
              Delete
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
