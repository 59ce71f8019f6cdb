import { offerUndo } from '../../app/notices.ts';
import { boards as store } from '../../store/boards.ts';
import type { Board, MoistureReading } from '../../store/records/board.ts';
import { degreesSign, readTemperature } from '../../ui/temperature.ts';
import { without } from '../../ui/without.ts';
import { ReadingForm, readPercent } from './reading-form.tsx';

const reads = {
  percent: readPercent,
  celsius: (text: string) => (text.trim() === '' ? undefined : readTemperature(text)),
};

/** One reading of the meter, for one board or for all of a delivery. */
export function ReadingEntry({ boards, formKey }: { boards: readonly Board[]; formKey: string }) {
  return (
    <ReadingForm
      formKey={`reading-form-2-${formKey}`}
      reads={reads}
      labels={{ percent: ['Meter reads', '%'], celsius: ['Wood temperature', degreesSign()] }}
      hint="Temperature only for a pin meter that doesn’t correct by itself."
      onNote={async ({ percent, celsius }, at) => {
        const reading: MoistureReading = { at, percent, ...(celsius !== undefined && { celsius }) };
        const ids = boards.map(({ id }) => id);
        await store.changeMany(ids, (board) => ({ ...board, readings: [...(board.readings ?? []), reading] }));
        offerUndo(boards.length === 1 ? 'Reading kept.' : `Kept on ${boards.length} boards.`, () =>
          store.changeMany(ids, (board) => ({ ...board, readings: without(board.readings, reading) })),
        );
      }}
    />
  );
}
