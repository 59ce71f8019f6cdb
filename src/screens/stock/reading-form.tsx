import { useState } from 'preact/hooks';
import { type Reads, useTexts, type Values } from '../../app/form.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { checked } from '../../core/answer/checked.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { Button } from '../../ui/button.tsx';
import { NumberField } from '../../ui/fields.tsx';
import { DayField } from './day-field.tsx';
import { today } from './today.ts';

/** A percentage as it is typed. */
export const readPercent = (text: string) =>
  checked(parseNumber(text), (typed) => badNumber('', 'The reading', typed, 'percent', { least: 0, most: 100 }));

interface Props<R extends Reads> {
  formKey: string;
  reads: R;
  /** What stands above each entry, and its unit. */
  labels: Readonly<Record<keyof R & string, readonly [label: string, unit: string]>>;
  hint: string;
  /** Stores the reading; `at` is the instant, or noon of the day it was taken on. */
  onNote(values: Values<R>, at: number): Promise<void>;
}

/** Noon of a day: a reading that is written down later was taken some time on it. */
const noonOf = (day: string) => new Date(`${day}T12:00:00`).getTime();

/** What a meter says, and on which day it said so. */
export function ReadingForm<R extends Reads>({ formKey, reads, labels, hint, onNote }: Props<R>) {
  const typed = useTexts(formKey, reads);
  const [day, setDay] = useState('');
  if (!typed) return null;
  const note = () =>
    typed.store(async (values) => {
      const now = Date.now();
      await onNote(values, day === '' || day === today(now) ? now : Math.min(now, noonOf(day)));
      setDay('');
    });
  return (
    <>
      <div class="fields">
        {Object.entries<readonly [string, string]>(labels).map(([name, [label, unit]]) => (
          <NumberField label={label} hint={unit} {...typed.field(name)} />
        ))}
        <DayField label="Read on" value={day === '' ? today(Date.now()) : day} onAccept={setDay} />
      </div>
      <p class="soft small">{hint}</p>
      <Button onClick={note}>Keep the reading</Button>
    </>
  );
}
