import { saveCalendar } from '../../app/save-calendar.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import { Button } from '../../ui/button.tsx';
import { calendarTimers } from './calendar-timers.ts';

/** What does ring on a locked phone: the calendar's own alarms. */
export function CalendarSave({ glueup, now }: { glueup: Glueup; now: number }) {
  const timers = calendarTimers(glueup, now);
  if (timers.length === 0) return null;
  return (
    <>
      <p class="soft">This app rings while it is open. A web app can’t wake a locked phone, but your calendar can.</p>
      <Button onClick={() => saveCalendar('glue-up.ics', timers)}>Put into the calendar</Button>
    </>
  );
}
