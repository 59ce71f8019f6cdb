import type { CalendarTimer } from '../core/calendar/calendar-file.ts';
import { Button } from '../ui/button.tsx';
import { saveCalendar } from './save-calendar.ts';

/** What does ring on a locked phone: the calendar's own alarms. */
export const CalendarButton = ({ of }: { of: readonly CalendarTimer[] }) =>
  of.length > 0 && (
    <>
      <p class="soft">This app rings while it is open. It can’t wake a locked phone; your calendar can.</p>
      <Button onClick={() => saveCalendar(of)}>Put into the calendar</Button>
    </>
  );
