import { badInstant } from '../answer/bad-instant.ts';
import { badNumber } from '../answer/bad-number.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { foldLine } from './fold-line.ts';

/** A timer that ends later; the instant in ms since the epoch. */
export interface CalendarTimer {
  /** The same each time the file is made, so that a calendar replaces the entry instead of doubling it. */
  readonly uid: string;
  readonly title: string;
  /** What to do then. */
  readonly note?: string;
  readonly endsAt: number;
  /** Counted up when the same timer is moved. */
  readonly sequence?: number;
}

/** 1970-01-01T00:00:00Z as 19700101T000000Z. */
const utc = (at: number) => new Date(at).toISOString().replace(/[-:]|\.\d+/g, '');

/** TEXT: backslash, semicolon and comma are escaped, a line break becomes \n; no other control characters (RFC 5545, 3.3.11). */
const text = (value: string) =>
  value
    .replace(/\r\n?/g, '\n')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must go
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '')
    .replace(/[\\;,]/g, '\\$&')
    .replace(/\n/g, '\\n');

/**
 * A calendar file with one event and one alarm for each timer.
 *
 * @param timers each with a lasting id, a title, and the instant it ends in ms since the epoch
 * @param madeAt when the file is made, ms since the epoch
 * @returns text of a .ics file, to be written as UTF-8
 * @valid instants from 1970 to 9999, all in UTC, so that no time zone need be described
 * @errors no timers, two with one id, no title, an instant that is none
 * @example calendarFile([{ uid: 'a', title: 'Clamps off', endsAt: 1767323045000 }], 0).includes(
 *   '\r\nDTSTART:20260102T030405Z\r\n',
 * ) // => true
 * @source RFC 5545
 */
export function calendarFile(timers: readonly CalendarTimer[], madeAt: number): Outcome<string> {
  const badMadeAt = badInstant('madeAt', 'The time of writing', madeAt);
  if (badMadeAt) return badMadeAt;
  if (timers.length === 0) return problem('timers', 'No timer ends later.');
  const uids = new Set<string>();
  const events: string[] = [];
  for (const [index, { uid, title, note, endsAt, sequence = 0 }] of timers.entries()) {
    const bad =
      badInstant(`timers.${index}.endsAt`, `The end of ${title}`, endsAt) ??
      badNumber(`timers.${index}.sequence`, 'The sequence', sequence, 'count', { least: 0, most: 1e9, whole: true });
    if (bad) return bad;
    if (title.trim() === '') return problem(`timers.${index}.title`, 'The timer has no name.');
    if (uid === '' || uids.has(uid)) return problem(`timers.${index}.uid`, `${title} needs an id of its own.`);
    uids.add(uid);
    events.push(
      'BEGIN:VEVENT',
      `UID:${text(uid)}`,
      `DTSTAMP:${utc(madeAt)}`,
      // Without an end it is a moment, and the maker stays free in the calendar (RFC 5545, 3.6.1).
      `DTSTART:${utc(endsAt)}`,
      `SEQUENCE:${sequence}`,
      'TRANSP:TRANSPARENT',
      `SUMMARY:${text(title)}`,
      ...(note ? [`DESCRIPTION:${text(note)}`] : []),
      'BEGIN:VALARM',
      'ACTION:DISPLAY',
      'TRIGGER:PT0S',
      `DESCRIPTION:${text(title)}`,
      'END:VALARM',
      'END:VEVENT',
    );
  }
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Boardwright//Bench timers//EN',
    'CALSCALE:GREGORIAN',
    ...events,
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${foldLine(line)}\r\n`).join('');
}
