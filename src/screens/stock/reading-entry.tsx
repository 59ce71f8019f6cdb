import { useState } from 'preact/hooks';
import { offerUndo } from '../../app/notices.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { checked } from '../../core/answer/checked.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import type { Outcome } from '../../core/answer/problem.ts';
import { boards as store } from '../../store/boards.ts';
import type { Board, MoistureReading } from '../../store/records/board.ts';
import { NumberField } from '../../ui/fields.tsx';
import { badTemperature, degreesSign, toCelsius } from '../../ui/temperature.ts';
import { DayField } from './day-field.tsx';
import { today } from './today.ts';
import { useTyped } from './use-typed.ts';
import { withoutReading } from './without-reading.ts';

const reads = {
  percent: (text: string) =>
    checked(parseNumber(text), (typed) => badNumber('', 'The reading', typed, 'percent', { least: 0, most: 100 })),
  degrees: (text: string): Outcome<number | undefined> =>
    text.trim() === '' ? undefined : checked(parseNumber(text), badTemperature),
};

/** Noon of a day: a reading that is written down later was taken some time on it. */
const noonOf = (day: string) => new Date(`${day}T12:00:00`).getTime();

/** One reading of the meter, for one board or for all of a delivery. */
export function ReadingEntry({ boards, formKey }: { boards: readonly Board[]; formKey: string }) {
  const typed = useTyped(`reading-form-1-${formKey}`, reads);
  const [day, setDay] = useState('');
  if (!typed) return null;

  const note = () =>
    typed.store(async ({ percent, degrees }) => {
      const now = Date.now();
      const at = day === '' || day === today(now) ? now : Math.min(now, noonOf(day));
      const reading: MoistureReading = { at, percent, ...(degrees !== undefined && { celsius: toCelsius(degrees) }) };
      // As they are stored now: what another tab changed meanwhile stays.
      const fresh = await Promise.all(boards.map(({ id }) => store.get(id)));
      await store.putMany(
        fresh
          .filter((board) => board !== undefined)
          .map((board) => ({ ...board, readings: [...(board.readings ?? []), reading] })),
      );
      offerUndo(boards.length === 1 ? 'The reading is noted.' : `Noted on ${boards.length} boards.`, async () => {
        for (const { id } of boards) await store.change(id, (board) => withoutReading(board, reading));
      });
    });

  return (
    <>
      <div class="fields">
        <NumberField label="Meter reads" hint="%" {...typed.field('percent')} />
        <NumberField label="Wood temperature" hint={degreesSign()} {...typed.field('degrees')} />
        <DayField label="Read on" value={day === '' ? today(Date.now()) : day} onAccept={setDay} />
      </div>
      <p class="soft small">
        Give the temperature for a meter with pins that doesn’t correct by itself; leave it empty for any other.
      </p>
      <button type="button" class="button" onClick={() => void note()}>
        Note reading
      </button>
    </>
  );
}
