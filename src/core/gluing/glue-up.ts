import { badInstant } from '../answer/bad-instant.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { type Quantity, seconds } from '../answer/quantity.ts';
import type { Range } from '../answer/range.ts';
import { type AdhesivePhase, type AdhesiveTimes, isHurry } from './adhesive.ts';

/** What has happened so far; instants in milliseconds since the epoch. The rest is expected. */
export interface GlueUpEvents {
  /** First glue spread. */
  readonly startedAt: number;
  /** All seams together. */
  readonly closedAt?: number | undefined;
  /** All clamps tight. */
  readonly clampedAt?: number | undefined;
  readonly unclampedAt?: number | undefined;
  /** Fit for the plane, as the maker says. */
  readonly restedAt?: number | undefined;
}

/** A stretch of a glue-up. In `open` and `closed` the maker hurries, in the others he waits. */
export interface GluePhase {
  readonly id: AdhesivePhase;
  readonly title: string;
  /** Seconds that it takes. */
  readonly takes: Range;
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

function badEvents({ startedAt, closedAt, clampedAt, unclampedAt, restedAt }: GlueUpEvents) {
  let before = 0;
  for (const [field, at = before] of Object.entries({ startedAt, closedAt, clampedAt, unclampedAt, restedAt })) {
    const bad = badInstant(field, 'The time', at);
    if (bad) return bad;
    if (at < before) return problem(field, 'Something is noted before what it follows. Was the clock set back?');
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
 * @valid instants, so neither time zone nor daylight saving moves them
 * @errors an event before the one it follows (a clock set back), or no date
 * @example glueUp(findAdhesive('PVA, interior').seconds, { startedAt: 0 }).phases[0]
 *   // => { id: 'open', from: 0, until: 300_000, other: 600_000 }
 * @source times from the table or the label
 */
export function glueUp(times: AdhesiveTimes, events: GlueUpEvents): Outcome<GlueUp> {
  const bad = badEvents(events);
  if (bad) return bad;
  const { startedAt, unclampedAt, restedAt } = events;
  const phases: GluePhase[] = [];
  const add = (id: AdhesivePhase, from: number, over: boolean) => {
    const takes = times[id];
    const [least, most] = [from + takes.least * 1000, from + takes.most * 1000];
    const [until, other] = isHurry(id) ? [least, most] : [most, least];
    const added: GluePhase = { id, title: titles[id], takes, from, until, other, over };
    phases.push(added);
    return added;
  };

  const clamped = events.clampedAt !== undefined || unclampedAt !== undefined;
  const open = add('open', startedAt, clamped || events.closedAt !== undefined);
  const closedAt = events.closedAt ?? Math.min(open.until, events.clampedAt ?? unclampedAt ?? open.until);
  const closed = add('closed', closedAt, clamped);
  const clampedAt = events.clampedAt ?? Math.min(closed.until, unclampedAt ?? closed.until);
  const clamp = add('clamp', clampedAt, unclampedAt !== undefined);
  add('rest', unclampedAt ?? clamp.until, restedAt !== undefined);
  add('cure', clampedAt, false);

  const remarks: Phrase[] = [];
  const remark = (ms: number, said: (by: Quantity) => Phrase) => {
    if (ms > 0) remarks.push(said(seconds(ms / 1000)));
  };
  remark(closedAt - open.until, (by) => phrase`Closed ${by} after the open time: the glue may have skinned over.`);
  remark(
    clampedAt - closed.until,
    (by) => phrase`Clamped ${by} after the closed time: the joint may be starved or thick.`,
  );
  if (unclampedAt !== undefined)
    remark(clamp.other - unclampedAt, (by) => phrase`Unclamped ${by} early: leave it flat, without load.`);
  return { phases, remarks };
}

/** Why to wait before planing: said beside the rest. */
export const sunkenSeams = phrase`Glue swells the wood beside each seam: planed too soon, the seams sink as it dries.`;
