import { offerUndo } from '../../app/notices.ts';
import { checked } from '../../core/answer/checked.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import type { Outcome } from '../../core/answer/problem.ts';
import { boards as store } from '../../store/boards.ts';
import type { Board, MoistureReading } from '../../store/records/board.ts';
import { badTemperature, degreesSign, toCelsius } from '../../ui/temperature.ts';
import { ReadingForm, readPercent } from './reading-form.tsx';
import { without } from './reading-list.tsx';

const reads = {
  percent: readPercent,
  degrees: (text: string): Outcome<number | undefined> =>
    text.trim() === '' ? undefined : checked(parseNumber(text), badTemperature),
};

/** One reading of the meter, for one board or for all of a delivery. */
export function ReadingEntry({ boards, formKey }: { boards: readonly Board[]; formKey: string }) {
  return (
    <ReadingForm
      formKey={`reading-form-1-${formKey}`}
      reads={reads}
      labels={{ percent: ['Meter reads', '%'], degrees: ['Wood temperature', degreesSign()] }}
      hint="Temperature only for a pin meter that doesn’t correct by itself."
      onNote={async ({ percent, degrees }, at) => {
        const reading: MoistureReading = { at, percent, ...(degrees !== undefined && { celsius: toCelsius(degrees) }) };
        // As they are stored now: what another tab changed meanwhile stays.
        const fresh = await Promise.all(boards.map(({ id }) => store.get(id)));
        await store.putMany(
          fresh
            .filter((board) => board !== undefined)
            .map((board) => ({ ...board, readings: [...(board.readings ?? []), reading] })),
        );
        offerUndo(boards.length === 1 ? 'Reading kept.' : `Kept on ${boards.length} boards.`, async () => {
          for (const { id } of boards)
            await store.change(id, (board) => ({ ...board, readings: without(board.readings, reading) }));
        });
      }}
    />
  );
}
