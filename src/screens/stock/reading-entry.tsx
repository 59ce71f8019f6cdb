import { useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { offerUndo } from '../../app/notices.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { checked } from '../../core/answer/checked.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { boards as store } from '../../store/boards.ts';
import type { Board, MoistureReading } from '../../store/records/board.ts';
import { NumberField } from '../../ui/fields.tsx';
import { badTemperature, degreesSign, toCelsius } from '../../ui/temperature.ts';
import { DayField } from './day-field.tsx';
import { today } from './today.ts';

interface Form {
  readonly percent: string;
  readonly degrees: string;
}

const empty: Form = { percent: '', degrees: '' };

const badPercent = (typed: number) => badNumber('', 'The reading', typed, 'percent', { least: 0, most: 100 });

/** Noon of a day: a reading that is written down later was taken some time on it. */
const noonOf = (day: string) => new Date(`${day}T12:00:00`).getTime();

/** One reading of the meter, for one board or for all of a delivery. */
export function ReadingEntry({ boards, formKey }: { boards: readonly Board[]; formKey: string }) {
  const draft = useDraft<Form>(`reading-form-1-${formKey}`, empty);
  const [day, setDay] = useState('');
  const [tried, setTried] = useState(false);
  const form = draft.value;
  if (!form) return null;
  const percent = checked(parseNumber(form.percent), badPercent);
  const degrees = form.degrees.trim() === '' ? undefined : checked(parseNumber(form.degrees), badTemperature);

  const note = async () => {
    setTried(true);
    if (isProblem(percent) || isProblem(degrees)) return;
    const now = Date.now();
    const at = day === '' || day === today(now) ? now : Math.min(now, noonOf(day));
    const reading: MoistureReading = { at, percent, ...(degrees !== undefined && { celsius: toCelsius(degrees) }) };
    try {
      // As they are stored now: what another tab changed meanwhile stays.
      const fresh = await Promise.all(boards.map(({ id }) => store.get(id)));
      await store.putMany(
        fresh
          .filter((board) => board !== undefined)
          .map((board) => ({ ...board, readings: [...(board.readings ?? []), reading] })),
      );
      draft.clear(empty);
      setTried(false);
      const without = ({ readings = [], ...board }: Board): Board => ({
        ...board,
        readings: readings.filter((one) => one.at !== at || one.percent !== percent),
      });
      offerUndo(boards.length === 1 ? 'The reading is noted.' : `Noted on ${boards.length} boards.`, async () => {
        for (const { id } of boards) await store.change(id, without);
      });
    } catch {
      // Not stored: the shell keeps the change and shows it, and the form stays as it was typed.
    }
  };

  const entry = (label: string, hint: string, field: keyof Form, got: Outcome<unknown>) => (
    <NumberField
      label={label}
      hint={hint}
      value={form[field]}
      problem={tried && isProblem(got) ? got : undefined}
      onInput={(text) => draft.set({ ...form, [field]: text })}
    />
  );

  return (
    <>
      <div class="fields">
        {entry('Meter reads', '%', 'percent', percent)}
        {entry('Wood temperature', degreesSign(), 'degrees', degrees)}
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
