import { notify } from '../../app/notices.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { calendarFile } from '../../core/calendar/calendar-file.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import { Button } from '../../ui/button.tsx';
import { saveFile } from '../../ui/save-file.ts';
import { calendarTimers } from './calendar-timers.ts';

/** What does ring on a locked phone: the calendar's own alarms. */
export function CalendarSave({ glueup, now }: { glueup: Glueup; now: number }) {
  const timers = calendarTimers(glueup, now);
  if (timers.length === 0) return null;
  const save = async () => {
    const text = calendarFile(timers, Date.now());
    if (isProblem(text)) return notify(text.message.text);
    const how = await saveFile('glue-up.ics', 'text/calendar', text);
    if (how === 'saved') notify('Saved. Open the file to put them in your calendar.');
  };
  return (
    <>
      <p class="soft">This app rings while it is open. A web app can’t wake a locked phone, but your calendar can.</p>
      <Button onClick={save}>Alarms for the calendar</Button>
    </>
  );
}
