import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { range } from '../../core/answer/range.ts';
import { sayPhrase } from '../../core/answer/say-phrase.ts';
import type { AdhesivePhase, AdhesiveTimes } from '../../core/gluing/adhesive.ts';
import { adhesiveTimes } from '../../core/gluing/adhesive-times.ts';
import { type GluePhase, type GlueUp, type GlueUpEvents, glueUp } from '../../core/gluing/glue-up.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import type { Timer } from '../../store/records/timer.ts';
import { findAdhesive } from '../../tables/adhesives.ts';
import { units } from '../../ui/units.ts';

/** What the maker says has happened. */
export type GlueEvent = 'closed' | 'clamped' | 'unclamped' | 'rested';

const begunBy: Readonly<Record<'closed' | 'clamped' | 'unclamped', AdhesivePhase>> = {
  closed: 'closed',
  clamped: 'clamp',
  unclamped: 'rest',
};

const said: Readonly<Record<GlueEvent, string>> = {
  closed: 'All closed.',
  clamped: 'All clamped.',
  unclamped: 'Unclamped.',
  rested: 'Rest is over.',
};

export const phasesOf = (times: AdhesiveTimes): { readonly name: AdhesivePhase; readonly seconds: number }[] => [
  { name: 'open', seconds: times.open.least },
  { name: 'closed', seconds: times.closed.least },
  { name: 'clamp', seconds: times.clamp.most },
  { name: 'rest', seconds: times.rest.most },
  { name: 'cure', seconds: times.cure.most },
];

/** The adhesive's times at this glue-up; of a kind that isn't known here, those that were kept with it. */
export function timesOf({ adhesive, celsius, label, phases }: Glueup): AdhesiveTimes {
  const known = findAdhesive(adhesive);
  const times = known && adhesiveTimes(known, celsius, label);
  if (times && !isProblem(times)) return times.value;
  const kept = (name: AdhesivePhase) => range(phases.find((phase) => phase.name === name)?.seconds ?? 0);
  return { open: kept('open'), closed: kept('closed'), clamp: kept('clamp'), rest: kept('rest'), cure: kept('cure') };
}

const begunAt = ({ phases }: Glueup, name: AdhesivePhase) => phases.find((phase) => phase.name === name)?.startedAt;

export function eventsOf(glueup: Glueup): GlueUpEvents {
  const closedAt = begunAt(glueup, 'closed');
  const clampedAt = begunAt(glueup, 'clamp');
  const { startedAt = glueup.created, unclampedAt } = glueup;
  return {
    startedAt,
    ...(closedAt !== undefined && { closedAt }),
    ...(clampedAt !== undefined && { clampedAt }),
    ...(unclampedAt !== undefined && { unclampedAt }),
  };
}

/** The glue-up along the clock. Its rest stays on view past its end, until the maker has seen it. */
export function runOf(glueup: Glueup): Outcome<GlueUp> {
  const run = glueUp(timesOf(glueup), eventsOf(glueup));
  if (isProblem(run)) return run;
  const over = glueup.restedAt !== undefined;
  return {
    ...run,
    phases: run.phases.map((phase) => (phase.id === 'rest' ? { ...phase, endedBy: 'maker', over } : phase)),
  };
}

/** The timer of the phase that now runs, for the bench; undefined when nothing is waited for. */
export function timerOf(glueup: Glueup, phases: readonly GluePhase[], at: number): Omit<Timer, 'id'> | undefined {
  const phase = phases.find(({ over, id, until }) => !over && (id !== 'cure' || until > at));
  if (!phase) return undefined;
  return {
    created: at,
    updated: at,
    revision: 0,
    ...(glueup.demo && { demo: true }),
    name: glueup.name,
    for: { kind: 'glueup', id: glueup.id },
    phase: phase.title,
    startedAt: phase.from,
    endsAt: phase.until,
  };
}

const order: readonly GlueEvent[] = ['closed', 'clamped', 'unclamped', 'rested'];

/** How far the glue-up is, as a place in the order of events; 0 when only spread. */
export function stepOf(glueup: Glueup): number {
  if (glueup.restedAt !== undefined) return 4;
  if (glueup.unclampedAt !== undefined) return 3;
  if (begunAt(glueup, 'clamp') !== undefined) return 2;
  return begunAt(glueup, 'closed') === undefined ? 0 : 1;
}

/**
 * The glue-up once something more has happened. Nothing is forbidden: what went another way than the times ask is
 * written in its log. A clock that was set back never puts an event before the one it follows.
 */
export function withEvent(glueup: Glueup, event: GlueEvent, now: number): Glueup {
  if (stepOf(glueup) > order.indexOf(event)) return glueup;
  const { startedAt, closedAt = 0, clampedAt = 0, unclampedAt = 0 } = eventsOf(glueup);
  const last = Math.max(startedAt, closedAt, clampedAt, unclampedAt);
  const at = Math.max(now, last);
  const begins = event === 'rested' ? undefined : begunBy[event];
  const next: Glueup = {
    ...glueup,
    phases: glueup.phases.map((phase) => (phase.name === begins ? { ...phase, startedAt: at } : phase)),
    ...(event === 'unclamped' && { unclampedAt: at }),
    ...(event === 'rested' && { restedAt: at }),
  };
  const texts = [
    said[event],
    ...(now < last ? ['The clock was set back before this: the time is not sure.'] : []),
    ...newRemarks(glueup, next),
  ];
  return { ...next, log: [...(glueup.log ?? []), ...texts.map((text) => ({ at, text }))] };
}

function newRemarks(before: Glueup, after: Glueup): string[] {
  const remarks = (glueup: Glueup) => {
    const run = runOf(glueup);
    return isProblem(run) ? [] : run.remarks.map((remark) => sayPhrase(remark, units.value));
  };
  const known = new Set(remarks(before));
  return remarks(after).filter((remark) => !known.has(remark));
}
