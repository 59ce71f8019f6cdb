import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { type CalendarTimer, calendarFile } from '../../../src/core/calendar/calendar-file.ts';
import { outside, outsideCases } from '../../setup/outside.ts';
import { solved } from '../gluing/helpers.ts';

const madeAt = Date.UTC(2026, 0, 2, 3, 4, 5);
const timer: CalendarTimer = {
  uid: 'lid-clamp@example',
  title: 'Lid: clamps off',
  endsAt: Date.UTC(2026, 2, 29, 1, 30),
};

const text = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 120 }).filter((title) => title.trim() !== '');
/** What RFC 5545 (3.3.11 TEXT, 3.1 CONTROL) lets through: line breaks become one kind, other control characters go. */
const plain = (value: string) =>
  [...value.replace(/\r\n?/g, '\n')]
    .filter((one) => one === '\n' || one === '\t' || (one >= ' ' && one !== '\x7f'))
    .join('');

const events = (file: string) => new ICAL.Component(ICAL.parse(file)).getAllSubcomponents('vevent');

describe('calendarFile', () => {
  it('is read back by a parser as written', () => {
    const timers = fc.uniqueArray(
      fc.record({ uid: fc.uuid(), title: text, note: text, endsAt: fc.integer({ min: 0, max: 4e12 }) }),
      { selector: ({ uid }) => uid, minLength: 1, maxLength: 10 },
    );
    const same = outsideCases({
      what: 'uid, title, note, end, time zone and alarm of timers in a calendar file, read back',
      source: 'ical.js',
      cases: 'random timers, up to ten in a file',
    });
    fc.assert(
      fc.property(timers, (given) => {
        const read = events(solved(calendarFile(given, madeAt)));
        expect(read).toHaveLength(given.length);
        read.forEach((component, index) => {
          const { uid, title, note, endsAt } = given[index] as Required<CalendarTimer>;
          const event = new ICAL.Event(component);
          const alarms = component.getAllSubcomponents('valarm');
          const rung = ['action', 'trigger', 'description'].map((name) =>
            String(alarms[0]?.getFirstPropertyValue(name)),
          );
          const { tzid } = event.startDate.zone;
          same(
            [event.uid, event.summary, event.description, event.startDate.toUnixTime(), tzid, alarms.length, ...rung],
            // The format has whole seconds.
            [uid, plain(title), plain(note), Math.floor(endsAt / 1000), 'UTC', 1, 'DISPLAY', 'PT0S', plain(title)],
          );
        });
      }),
    );
  });

  it("keeps the RFC's rules for lines: CRLF after each, 75 octets at most, also with characters of many octets", () => {
    const note = 'Nußbaum, 木; 🪵 '.repeat(20);
    const file = solved(calendarFile([{ ...timer, note }], madeAt));
    expect(file.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(file.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const lines = file.split('\r\n');
    outside({
      what: 'octets in the longest line of a calendar file with a long note',
      source: 'rfc-5545',
      at: 'section 3.1: 75 at most',
      expected: 75,
      got: Math.max(...lines.map((line) => new TextEncoder().encode(line).length)),
    });
    expect(lines.some((line) => line.startsWith(' '))).toBe(true);
    expect(new ICAL.Event(events(file)[0] as InstanceType<typeof ICAL.Component>).description).toBe(note);
  });

  it('has what is asked of a calendar, an event and a display alarm', () => {
    const lines = solved(calendarFile([timer], madeAt)).split('\r\n');
    expect(lines[2]).toMatch(/^PRODID:./);
    outside({
      what: 'how a calendar file begins',
      source: 'rfc-5545',
      at: 'section 3.6',
      expected: ['BEGIN:VCALENDAR', 'VERSION:2.0'],
      got: lines.slice(0, 2),
    });
    expect(lines).toContain('DTSTAMP:20260102T030405Z');
    expect(lines).toContain('DTSTART:20260329T013000Z');
    expect(lines).toContain('UID:lid-clamp@example');
    const alarm = lines.slice(lines.indexOf('BEGIN:VALARM'), lines.indexOf('END:VALARM') + 1);
    outside({
      what: 'a display alarm',
      source: 'rfc-5545',
      at: 'section 3.6.6',
      expected: ['BEGIN:VALARM', 'ACTION:DISPLAY', 'TRIGGER:PT0S', 'DESCRIPTION:Lid: clamps off', 'END:VALARM'],
      got: alarm,
    });
  });

  it('escapes backslash, semicolon, comma and line breaks (3.3.11)', () => {
    const file = solved(calendarFile([{ ...timer, note: 'a\\b;c,d\r\ne\u0007' }], madeAt));
    outside({
      what: 'backslash, semicolon, comma and line break in a note',
      source: 'rfc-5545',
      at: 'section 3.3.11',
      expected: 'DESCRIPTION:a\\\\b\\;c\\,d\\ne',
      got: file.split('\r\n').find((line) => line.startsWith('DESCRIPTION:a')),
    });
  });

  it('keeps a later move of the same timer apart by its sequence', () => {
    expect(solved(calendarFile([{ ...timer, sequence: 3 }], madeAt))).toContain('SEQUENCE:3\r\n');
  });

  it.each([
    [[], madeAt, 'timers'],
    [[timer, timer], madeAt, 'timers.1.uid'],
    [[{ ...timer, title: ' ' }], madeAt, 'timers.0.title'],
    [[{ ...timer, endsAt: Number.NaN }], madeAt, 'timers.0.endsAt'],
    [[{ ...timer, endsAt: 1e16 }], madeAt, 'timers.0.endsAt'],
    [[{ ...timer, sequence: -1 }], madeAt, 'timers.0.sequence'],
    [[timer], Number.POSITIVE_INFINITY, 'madeAt'],
  ])('refuses %j at %d', (timers, at, field) => {
    expect(calendarFile(timers, at)).toMatchObject({ kind: 'problem', field });
  });
});
