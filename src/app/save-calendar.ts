import { isProblem } from '../core/answer/problem.ts';
import { sayPhrase } from '../core/answer/say-phrase.ts';
import { type CalendarTimer, calendarFile } from '../core/calendar/calendar-file.ts';
import { saveFile } from '../ui/save-file.ts';
import { units } from '../ui/units.ts';
import { notify } from './notices.ts';

/** Hands over waits as alarms: the app can't wake a locked phone, a calendar can. */
export async function saveCalendar(timers: readonly CalendarTimer[]): Promise<void> {
  const text = calendarFile(timers, Date.now());
  if (isProblem(text)) return notify(sayPhrase(text.message, units.value));
  const how = await saveFile('boardwright.ics', 'text/calendar', text);
  if (how === 'saved') notify('Saved. Open the file to put them in your calendar.');
}
