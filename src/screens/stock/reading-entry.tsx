import { useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { offerUndo } from '../../app/notices.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { boards as store } from '../../store/boards.ts';
import type { Board, MoistureReading } from '../../store/records/board.ts';
import { NumberField } from '../../ui/fields.tsx';
import { DayField } from './day-field.tsx';
import { degreesSign, toCelsius } from './temperature.ts';
import { today } from './today.ts';

interface Form {
  readonly percent: string;
  readonly degrees: string;
}

const empty: Form = { percent: '', degrees: '' };

function readPercent(text: string): Outcome<number> {
  const got = parseNumber(text);
  if (isProblem(got)) return got;
  return badNumber('percent', 'The reading', got, 'percent', { least: 0, most: 100 }) ?? got;
}

function readDegrees(text: string): Outcome<number | undefined> {
  if (text.trim() === '') return undefined;
  const got = parseNumber(text);
  if (isProblem(got)) return got;
  return badNumber('degrees', 'The temperature', toCelsius(got), 'celsius', { least: -20, most: 60 }) ?? toCelsius(got);
}

/** Noon of a day: a reading that is written down later was taken some time on it. */
const noonOf = (day: string) => new Date(`${day}T12:00:00`).getTime();

/** One reading of the meter, for one board or for all of a delivery. */
export function ReadingEntry({ boards, formKey }: { boards: readonly Board[]; formKey: string }) {
  const draft = useDraft<Form>(`reading-form-1-${formKey}`, empty);
  const [day, setDay] = useState('');
  const [tried, setTried] = useState(false);
  const form = draft.value;
  if (!form) return null;
  const percent = readPercent(form.percent);
  const celsius = readDegrees(form.degrees);

  const note = async () => {
    setTried(true);
    if (isProblem(percent) || isProblem(celsius)) return;
    const now = Date.now();
    const at = day === '' || day === today(now) ? now : Math.min(now, noonOf(day));
    const reading: MoistureReading = { at, percent, ...(celsius !== undefined && { celsius }) };
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

  return (
    <>
      <div class="fields">
        <NumberField
          label="Meter reads"
          hint="%"
          value={form.percent}
          problem={tried && isProblem(percent) ? percent : undefined}
          onInput={(text) => draft.set({ ...form, percent: text })}
        />
        <NumberField
          label="Wood temperature"
          hint={degreesSign()}
          value={form.degrees}
          problem={tried && isProblem(celsius) ? celsius : undefined}
          onInput={(text) => draft.set({ ...form, degrees: text })}
        />
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
