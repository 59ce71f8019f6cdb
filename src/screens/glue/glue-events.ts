import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { range } from '../../core/answer/range.ts';
import { sayPhrase } from '../../core/answer/say-phrase.ts';
import {
  type AdhesivePhase,
  type AdhesiveTimes,
  adhesivePhases,
  isHurry,
  timesBy,
} from '../../core/gluing/adhesive.ts';
import { adhesiveTimes } from '../../core/gluing/adhesive-times.ts';
import { type GlueUp, type GlueUpEvents, glueUp } from '../../core/gluing/glue-up.ts';
import { type PhaseAt, phaseAt } from '../../core/gluing/phase-at.ts';
import { freshRecord } from '../../store/records/fresh-record.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import type { Timer } from '../../store/records/timer.ts';
import { adhesiveById } from '../../tables/adhesives.ts';
import { units } from '../../ui/units.ts';

/** What the maker says has happened. */
export type GlueEvent = 'closed' | 'clamped' | 'unclamped' | 'rested';

/** What the maker says, in order, with the phase that begins by it. */
export const glueEvents: readonly {
  readonly event: GlueEvent;
  readonly label: string;
  readonly begins?: AdhesivePhase;
}[] = [
  { event: 'closed', label: 'All closed', begins: 'closed' },
  { event: 'clamped', label: 'All clamped', begins: 'clamp' },
  { event: 'unclamped', label: 'Unclamped', begins: 'rest' },
  { event: 'rested', label: 'Rest is over' },
];

export const phasesOf = (times: AdhesiveTimes) =>
  adhesivePhases.map((name) => ({ name, seconds: isHurry(name) ? times[name].least : times[name].most }));

/** The adhesive's times at this glue-up; of a kind that isn't known here, those that were kept with it. */
export function timesOf({ adhesive, celsius, label, phases }: Glueup): AdhesiveTimes {
  const known = adhesiveById(adhesive);
  const times = known && adhesiveTimes(known, celsius, label);
  if (times && !isProblem(times)) return times.value;
  return timesBy((name) => range(phases.find((phase) => phase.name === name)?.seconds ?? 0));
}

export function eventsOf({ phases, created, startedAt = created, unclampedAt, restedAt }: Glueup): GlueUpEvents {
  const begunAt = (name: AdhesivePhase) => phases.find((phase) => phase.name === name)?.startedAt;
  return { startedAt, closedAt: begunAt('closed'), clampedAt: begunAt('clamp'), unclampedAt, restedAt };
}

/** The glue-up along the clock. */
export const runOf = (glueup: Glueup): Outcome<GlueUp> => glueUp(timesOf(glueup), eventsOf(glueup));

/** Which phase it is in, and how long that still runs. */
export function phaseOf(glueup: Glueup, now: number): Outcome<PhaseAt> {
  const run = runOf(glueup);
  return isProblem(run) ? run : phaseAt(run.phases, now);
}

/** The timer of the phase that now runs, for the bench; undefined when nothing is waited for. */
export function timerOf(glueup: Glueup, now: number): Timer | undefined {
  const { id, name, demo, startedAt = now } = glueup;
  // A clock that was set back shows a moment before the start.
  const at = phaseOf(glueup, Math.max(now, startedAt));
  if (isProblem(at) || !at.phase) return undefined;
  const { title, from, until } = at.phase;
  const timer = { name, for: { kind: 'glueup', id }, phase: title, startedAt: from, endsAt: until } as const;
  return freshRecord<Timer>({ ...timer, ...(demo && { demo }) }, now);
}

/** How far the glue-up is: how many of the events are behind it. */
export const stepOf = (glueup: Glueup): number =>
  Object.values(eventsOf(glueup)).findLastIndex((at) => at !== undefined);

/**
 * The glue-up once something more has happened. Nothing is forbidden: what went another way than the times ask is
 * written in its log. A clock that was set back never puts an event before the one it follows.
 */
export function withEvent(glueup: Glueup, event: GlueEvent, now: number): Glueup {
  const told = glueEvents.slice(stepOf(glueup)).find((one) => one.event === event);
  if (!told) return glueup;
  const last = Math.max(...Object.values(eventsOf(glueup)).map((at) => at ?? 0));
  const at = Math.max(now, last);
  const next: Glueup = {
    ...glueup,
    phases: glueup.phases.map((phase) => (phase.name === told.begins ? { ...phase, startedAt: at } : phase)),
    ...(event === 'unclamped' && { unclampedAt: at }),
    ...(event === 'rested' && { restedAt: at }),
  };
  const log = glueup.log ?? [];
  const run = runOf(next);
  const remarks = isProblem(run) ? [] : run.remarks.map((remark) => sayPhrase(remark, units.value));
  const texts = [
    `${told.label}.`,
    ...(now < last ? ['The clock was set back: the time is not sure.'] : []),
    ...remarks.filter((remark) => !log.some(({ text }) => text === remark)),
  ];
  return { ...next, log: [...log, ...texts.map((text) => ({ at, text }))] };
}
