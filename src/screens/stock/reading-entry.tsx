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
        const ids = boards.map(({ id }) => id);
        await store.changeMany(ids, (board) => ({ ...board, readings: [...(board.readings ?? []), reading] }));
        offerUndo(boards.length === 1 ? 'Reading kept.' : `Kept on ${boards.length} boards.`, async () => {
          await store.changeMany(ids, (board) => ({ ...board, readings: without(board.readings, reading) }));
        });
      }}
    />
  );
}
