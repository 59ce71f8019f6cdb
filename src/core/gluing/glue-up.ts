import { badInstant } from '../answer/bad-instant.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { type Quantity, seconds } from '../answer/quantity.ts';
import type { Range } from '../answer/range.ts';
import { type AdhesivePhase, type AdhesiveTimes, adhesivePhases, isHurry } from './adhesive.ts';

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

/** What is said of a phase that ended too late, of the hurries, or too early. */
const offTime: Readonly<Partial<Record<AdhesivePhase, (by: Quantity) => Phrase>>> = {
  open: (by) => phrase`Closed ${by} after the open time: the glue may have skinned over.`,
  closed: (by) => phrase`Clamped ${by} after the closed time: the joint may be starved or thick.`,
  clamp: (by) => phrase`Unclamped ${by} early: leave it flat, without load.`,
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
  const { startedAt, closedAt, clampedAt, unclampedAt, restedAt } = events;
  const ends = [closedAt, clampedAt, unclampedAt, restedAt];
  const phases: GluePhase[] = [];
  const remarks: Phrase[] = [];
  let from = startedAt;
  let tight = startedAt;
  for (const [index, id] of adhesivePhases.entries()) {
    if (id === 'clamp') tight = from;
    if (id === 'cure') from = tight;
    const takes = times[id];
    const [least, most] = [from + takes.least * 1000, from + takes.most * 1000];
    const [until, other] = isHurry(id) ? [least, most] : [most, least];
    // The end of a later phase ends this one too.
    const told = ends.slice(index).find((at) => at !== undefined);
    phases.push({ id, title: titles[id], takes, from, until, other, over: told !== undefined });
    from = ends[index] ?? Math.min(until, told ?? until);
    const off = isHurry(id) ? from - until : other - from;
    const remark = offTime[id];
    if (remark && off > 0) remarks.push(remark(seconds(off / 1000)));
  }
  return { phases, remarks };
}

/** Why to wait before planing: said beside the rest. */
export const sunkenSeams = phrase`Glue swells the wood beside each seam: planed too soon, the seams sink as it dries.`;
