import { badInstant } from '../answer/bad-instant.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { seconds } from '../answer/quantity.ts';
import type { AdhesivePhase, AdhesiveTimes } from './adhesive.ts';

/** What has happened so far; instants in milliseconds since the epoch. The rest is expected. */
export interface GlueUpEvents {
  /** First glue spread. */
  readonly startedAt: number;
  /** All seams together. */
  readonly closedAt?: number;
  /** All clamps tight. */
  readonly clampedAt?: number;
  readonly unclampedAt?: number;
}

/** A stretch of a glue-up. In `open` and `closed` the maker hurries, in the others he waits. */
export interface GluePhase {
  readonly id: AdhesivePhase;
  readonly title: string;
  readonly kind: 'hurry' | 'wait';
  /** Rest and cure end by themselves; the others when the maker says so. */
  readonly endedBy: 'maker' | 'clock';
  /** ms since the epoch */
  readonly from: number;
  /** To hurry: the glue may be past it from here on. To wait: safe from here on. */
  readonly until: number;
  /** The other end of the range: to hurry, surely past it; to wait, the earliest. */
  readonly other: number;
  /** Whether the maker has said that it is over. */
  readonly over: boolean;
}

export interface GlueUp {
  /** In order of time; `cure` runs beside `rest` and ends last. */
  readonly phases: readonly GluePhase[];
  /** What went another way than the times ask, to be kept with the log. Nothing is forbidden. */
  readonly remarks: readonly Phrase[];
}

const titles: Readonly<Record<AdhesivePhase, string>> = {
  open: 'Spread and close',
  closed: 'Clamp',
  clamp: 'In the clamps',
  rest: 'Rest before planing',
  cure: 'To full strength',
};

function badEvents({ startedAt, closedAt, clampedAt, unclampedAt }: GlueUpEvents) {
  const events = [
    ['startedAt', 'The start', startedAt],
    ['closedAt', 'The closing', closedAt],
    ['clampedAt', 'The clamping', clampedAt],
    ['unclampedAt', 'The unclamping', unclampedAt],
  ] as const;
  let before = 0;
  for (const [field, name, at] of events) {
    if (at === undefined) continue;
    const bad = badInstant(field, name, at);
    if (bad) return bad;
    if (at < before) return problem(field, `${name} comes before what it follows. Was the clock set back?`);
    before = at;
  }
  return undefined;
}

/**
 * The phases of one glue-up along the clock.
 *
 * Until the maker says otherwise a joint is taken as closed, and clamped, at the last safe moment.
 *
 * @param times of the adhesive at today's temperature, seconds
 * @param events what has happened, ms since the epoch
 * @returns phases with instants in ms since the epoch, and remarks
 *
 * Valid: instants, so neither time zone nor daylight saving moves them.
 * Errors: an event before the one it follows (a clock set back), or no date.
 * Example: started at 0 with open time 300 to 600 s: `open` runs from 0 until 300 000 ms, `other` 600 000.
 * Source: times from the table or the label.
 */
export function glueUp(times: AdhesiveTimes, events: GlueUpEvents): Outcome<GlueUp> {
  const bad = badEvents(events);
  if (bad) return bad;
  const { startedAt, unclampedAt } = events;
  const phases: GluePhase[] = [];
  const add = (id: AdhesivePhase, from: number, over: boolean) => {
    const kind = id === 'open' || id === 'closed' ? 'hurry' : 'wait';
    const [until, other] = kind === 'hurry' ? [times[id].least, times[id].most] : [times[id].most, times[id].least];
    const added: GluePhase = {
      id,
      title: titles[id],
      kind,
      endedBy: id === 'rest' || id === 'cure' ? 'clock' : 'maker',
      from,
      until: from + until * 1000,
      other: from + other * 1000,
      over,
    };
    phases.push(added);
    return added;
  };

  const clamped = events.clampedAt !== undefined || unclampedAt !== undefined;
  const open = add('open', startedAt, clamped || events.closedAt !== undefined);
  const closedAt = events.closedAt ?? Math.min(open.until, events.clampedAt ?? unclampedAt ?? open.until);
  const closed = add('closed', closedAt, clamped);
  const clampedAt = events.clampedAt ?? Math.min(closed.until, unclampedAt ?? closed.until);
  const clamp = add('clamp', clampedAt, unclampedAt !== undefined);
  add('rest', unclampedAt ?? clamp.until, false);
  add('cure', clampedAt, false);

  const remarks: Phrase[] = [];
  const late = (at: number | undefined, phase: GluePhase, said: string) => {
    if (at !== undefined && at > phase.until) remarks.push(phrase(said, { by: seconds((at - phase.until) / 1000) }));
  };
  late(events.closedAt, open, 'Closed {by} after the open time: the glue may have skinned over. Watch this joint.');
  late(events.clampedAt, closed, 'Clamped {by} after the closed time: the joint may be starved or thick. Watch it.');
  if (unclampedAt !== undefined && unclampedAt < clamp.other)
    remarks.push(
      phrase('Unclamped {by} early: leave it lying flat and put no load on it.', {
        by: seconds((clamp.other - unclampedAt) / 1000),
      }),
    );
  return { phases, remarks };
}

/** Why to wait before planing: said beside the rest. */
export const sunkenSeams = phrase(
  'Glue swells the wood beside each seam. Planed now, the seams sink when that water has left: wait until it is even again.',
);
