import { type Phrase, phrase } from '../../core/answer/phrase.ts';
import type { Machine } from '../../core/milling/milling-step.ts';
import { readyPieces } from '../../core/milling/ready-pieces.ts';
import { isSettled } from '../../core/steps/progress.ts';
import type { Finish } from '../../store/records/finish.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import type { Milling } from '../../store/records/milling.ts';
import type { Timer } from '../../store/records/timer.ts';
import type { KeptStep } from '../finish/finish-steps.ts';
import { latestOf } from '../finish/latest-of.ts';
import { asMilled } from '../glue/as-milled.ts';
import { stepsOfRun } from '../mill/steps-of-run.ts';
import { jobThread, nextStage, type PieceRecords, type Stage } from './job-thread.ts';

/** One thing that the bench says: what, of which piece, at which machine, and the way there. */
export interface Answer {
  readonly what: Phrase;
  readonly of: string;
  readonly screen: string;
  readonly id: string;
  readonly machine?: Machine;
  /** Pieces of wood that are ready for it. */
  readonly ready?: number;
  /** When its wait ends or ended, ms since the epoch. */
  readonly until?: number | undefined;
  /** When it is too late for it. */
  readonly by?: number | undefined;
  /** Reckoned, not timed. */
  readonly about?: boolean;
  /** The step of a run that the way leads to. */
  readonly step?: string | undefined;
}

export interface Answers {
  /** What can be done at once: what hurries, then what has waited long enough, then the work, machine by machine. */
  readonly now: readonly Answer[];
  /** What waits, the first to end on top. */
  readonly waits: readonly Answer[];
  readonly missing: readonly Answer[];
}

/** What takes more than a glance at the records, and so comes a moment after them. */
export interface Later extends Omit<Answers, 'now'> {
  /** Names of the glue-ups that can begin, of pieces that have any to glue. */
  readonly gluable: ReadonlyMap<string, readonly string[]>;
}

export interface BenchRecords {
  readonly boardCount: number;
  /** Those that are not finished, the one in hand first. */
  readonly pieces: readonly PieceRecords[];
  /** Those that nobody has ended. */
  readonly timers: readonly Timer[];
  /** What timers run for, with or without a piece. */
  readonly glueups: readonly Glueup[];
}

/** What to do, what waits and what is missing, from all records; `now` in ms since the epoch. */
export function whatNow({ boardCount, pieces, timers, glueups }: BenchRecords, now: number, later?: Later): Answers {
  const hurries: Answer[] = [];
  const due: Answer[] = [];
  const work: Answer[] = [];
  /** Comes after the rest, so that nothing moves under the thumb. */
  const late: Answer[] = [];
  const waits = [...(later?.waits ?? [])];
  const missing: Answer[] = [];
  /** Ended waits for which the step that they held back speaks. */
  const heard = new Set<Timer>();

  for (const records of pieces) {
    const { piece, plan, milling, finish } = records;
    const at = (screen: string, what: string, id = piece.id): Answer => ({
      what: phrase`${what}`,
      of: piece.name,
      screen,
      id,
    });
    const held = records.glueups.filter(({ restedAt }) => restedAt === undefined);
    const own = [...held, milling, finish].map((record) => record?.id);
    const running = timers.filter((timer) => own.includes(timer.for.id));
    const before = due.length + work.length;

    const lacks = new Set(plan?.short.map(({ part }) => piece.parts.find(({ id }) => id === part)?.name ?? part));
    if (lacks.size > 0) missing.push(at('breakdown', `Short of wood for ${andMore([...lacks])}`));
    if (milling && !milling.finishedAt)
      work.push(...readySteps(milling, running, held).map((step) => ({ ...at('mill', '', milling.id), ...step })));
    const coat = finish?.pieceId === piece.id && !finish.finishedAt && nextOfFinish(finish, running, now);
    if (coat) {
      for (const timer of coat.over) heard.add(timer);
      const { title, until, by } = coat;
      (coat.presses ? due : work).push({ ...at('finish', '', finish.id), what: title, until, by });
    }

    const thread = jobThread(records, boardCount);
    const gluable = later?.gluable.get(piece.id);
    const nothing = before === due.length + work.length && running.length === 0;
    const say = (next: Stage | undefined) =>
      next ? at(next.name, next.next, next.id) : at('piece', 'All stages done');
    // Whether there is more to glue is known a moment later.
    if (records.glueups.length === 0 && nextStage(thread)?.name !== 'glue') {
      if (nothing) work.push(say(nextStage(thread)));
    } else if (gluable?.[0]) {
      late.push({ ...at('glue', `Glue up ${gluable[0]}`), machine: 'clamps', ready: gluable.length });
    } else if (later && nothing) {
      // Perhaps all was glued along with the milling.
      late.push(say(nextStage(gluable ? thread.map(asGlued) : thread)));
    }
  }

  for (const timer of timers) {
    const { phase, name, endsAt, step } = timer;
    const glueup = glueups.find(({ id }) => id === timer.for.id);
    const ended = endsAt <= now;
    // Full strength asks for nothing.
    if (heard.has(timer) || (ended && glueup?.restedAt !== undefined)) continue;
    const open = glueup && !glueup.phases.some((one) => one.name === 'clamp' && one.startedAt !== undefined);
    const over = glueup && !open && (glueup.unclampedAt === undefined ? 'Clamps off' : 'Ready to plane');
    (open ? hurries : ended ? due : waits).push({
      what: phrase`${(ended && over) || phase}`,
      of: name,
      screen: screenOf[timer.for.kind] ?? 'glue',
      id: timer.for.id,
      until: endsAt,
      step,
    });
  }

  const machines = [...new Set(work.map(({ machine }) => machine))];
  return {
    now: [
      ...byTime(hurries),
      ...byTime(due),
      ...machines.flatMap((machine) => work.filter((one) => one.machine === machine)),
      ...late,
    ],
    waits: byTime(waits),
    missing: [...missing, ...(later?.missing ?? [])],
  };
}

/** With the glue seen to. */
const asGlued = (stage: Stage): Stage =>
  stage.name === 'glue' && stage.state === 'open' ? { ...stage, state: 'done' } : stage;

/** What needs no ending counts as the last to end. */
const byTime = (answers: readonly Answer[]) =>
  answers.toSorted((a, b) => (a.until ?? Number.MAX_VALUE) - (b.until ?? Number.MAX_VALUE));

/** Some names, so that a line holds them. */
export const andMore = ([first = '', ...others]: readonly string[]) =>
  others.length === 0 ? first : `${first} and ${others.length} more`;

/** The first step at each machine that has wood ready for it and doesn't wait. */
function readySteps(run: Milling, waits: readonly Timer[], held: readonly Glueup[]) {
  const steps = stepsOfRun(run);
  const ready = readyPieces(steps, run.ticks);
  const inGlue = new Set(held.map(({ stage }) => asMilled(stage)));
  const machines = new Set<Machine>();
  return steps.flatMap(({ id, title, machine }) => {
    const pieces = (ready.get(id) ?? []).filter(
      (piece) => machine !== 'clamps' || !(inGlue.has(piece) || inGlue.has(piece.slice(0, -1))),
    );
    if (pieces.length === 0 || machines.has(machine) || waits.some(({ step }) => step === id)) return [];
    machines.add(machine);
    return [{ what: title, machine, ready: pieces.length, step: id }];
  });
}

/** The next step of a finish, with the waits that are over for it; undefined while one holds it back. */
function nextOfFinish(finish: Finish, waits: readonly Timer[], now: number) {
  const steps = finish.steps as unknown as readonly KeptStep[];
  const next = steps.find((step) => !isSettled(finish.ticks, step));
  if (!next) return undefined;
  const rags = next.stage === 'rags';
  // A wait of the step's own kind runs for what is coated already; rags wait for nothing.
  const over = waits.filter(
    ({ phase, for: { id } }) =>
      id === finish.id && !rags && !/^(Wipe|Pot)/.test(phase) && !next.waits.some(({ name }) => name === phase),
  );
  if (over.some(({ endsAt }) => endsAt > now)) return undefined;
  const [by] = over.flatMap((timer) => latestOf(timer, steps) ?? []).sort((a, b) => a - b);
  const until = over.map(({ endsAt }) => endsAt).sort((a, b) => b - a)[0];
  return { title: next.title, over, until, by, presses: rags || over.length > 0 };
}

const screenOf: Readonly<Record<string, string>> = { milling: 'mill', finish: 'finish' };
