import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { calendarFile } from '../../../src/core/calendar/calendar-file.ts';
import { calendarTimers } from '../../../src/screens/glue/calendar-timers.ts';
import { withEvent } from '../../../src/screens/glue/glue-events.ts';
import { outside } from '../../setup/outside.ts';
import { hours, minutes, morning, started } from './samples.ts';

test('what comes later is in the calendar with an alarm, as a well-known parser reads it', () => {
  const clamped = withEvent(started(), 'clamped', morning + minutes(5));
  const text = calendarFile(calendarTimers(clamped, morning + minutes(6)), morning + minutes(6));
  const events = new ICAL.Component(ICAL.parse(text as string)).getAllSubcomponents('vevent');
  const [off] = events.map((event) => new ICAL.Event(event));
  outside({
    what: 'timers of a glue-up in the calendar file, read back: titles, first instant',
    source: 'ical.js',
    expected: ['Clamps off: Shelf', 'Ready to plane: Shelf', 'Full strength: Shelf', morning + minutes(65)],
    got: [...events.map((event) => event.getFirstPropertyValue('summary')), off?.startDate.toJSDate().getTime()],
  });
  expect(events.every((event) => event.getFirstSubcomponent('valarm') !== null)).toBe(true);
});

test('what is over, or was missed, is not', () => {
  const clamped = withEvent(started(), 'clamped', morning + minutes(5));
  const titles = calendarTimers(clamped, morning + hours(2)).map(({ title }) => title);
  expect(titles).toEqual(['Ready to plane: Shelf', 'Full strength: Shelf']);
  const uids = (at: number) => calendarTimers(clamped, at).map(({ uid }) => uid);
  // The same ids each time, so that a calendar moves the entry and doesn't double it.
  expect(uids(morning + hours(2))).toEqual(uids(morning + hours(3)));
});
