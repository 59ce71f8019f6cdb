/** What progress must know of a step. One without pieces is ticked as a whole. */
export interface Step {
  readonly id: string;
  readonly pieces?: readonly { readonly id: string }[];
}

/** How far one step is: which of its pieces are through, why it was skipped, if it was, and when that was said last. */
export interface StepTicks {
  readonly pieces: readonly string[];
  readonly skipped?: string;
  readonly at: number;
}

/**
 * How far a step list is, by step id. A step that has no pieces is through as soon as it is here. Steps and pieces that
 * a new plan no longer has do no harm.
 */
export interface Ticks {
  readonly [stepId: string]: StepTicks;
}

const piecesOf = ({ pieces = [] }: Step): readonly { readonly id: string }[] => pieces;

/**
 * The pieces of a step that are through.
 *
 * @param ticks so far
 * @param step the step
 * @returns ids of its pieces
 * @example [...throughOf({ rip: { pieces: ['A1'], at: 0 } }, { id: 'rip', pieces: [{ id: 'A1' }, { id: 'A2' }] })]
 *   // => ['A1']
 */
export function throughOf(ticks: Ticks, step: Step): ReadonlySet<string> {
  const ticked = ticks[step.id]?.pieces ?? [];
  return new Set(piecesOf(step).flatMap(({ id }) => (ticked.includes(id) ? [id] : [])));
}

/**
 * Whether nothing of a step is left to do: its pieces are through, or it was skipped.
 *
 * @param ticks so far
 * @param step the step
 * @returns yes or no
 * @example isSettled({ rip: { pieces: ['A1'], at: 0 } }, { id: 'rip', pieces: [{ id: 'A1' }, { id: 'A2' }] })
 *   // => false
 */
export function isSettled(ticks: Ticks, step: Step): boolean {
  const ticked = ticks[step.id];
  if (!ticked) return false;
  return ticked.skipped !== undefined || throughOf(ticks, step).size === piecesOf(step).length;
}

/**
 * Ticks pieces of a step; those that are ticked already, or that the step doesn't have, change nothing.
 *
 * @param ticks so far
 * @param step the step
 * @param ids of pieces of the step
 * @param now ms since the epoch
 * @returns new ticks
 * @example tick({}, { id: 'rip', pieces: [{ id: 'A1' }] }, ['A1'], 0) // => { rip: { pieces: ['A1'], at: 0 } }
 */
export function tick(ticks: Ticks, step: Step, ids: readonly string[], now: number): Ticks {
  const before = ticks[step.id];
  const ticked = before?.pieces ?? [];
  const added = piecesOf(step).flatMap(({ id }) => (ids.includes(id) && !ticked.includes(id) ? [id] : []));
  return added.length === 0 ? ticks : { ...ticks, [step.id]: { ...before, pieces: [...ticked, ...added], at: now } };
}

/**
 * Ticks every piece of a step, or the step as a whole; when it is settled nothing changes.
 *
 * @param ticks so far
 * @param step the step
 * @param now ms since the epoch
 * @returns new ticks
 * @example tickAll({}, { id: 'rip', pieces: [{ id: 'A1' }, { id: 'A2' }] }, 0)
 *   // => { rip: { pieces: ['A1', 'A2'], at: 0 } }
 */
export function tickAll(ticks: Ticks, step: Step, now: number): Ticks {
  if (isSettled(ticks, step) && ticks[step.id]?.skipped === undefined) return ticks;
  return { ...ticks, [step.id]: { pieces: piecesOf(step).map(({ id }) => id), at: now } };
}

/**
 * Takes the ticks of pieces back; without one nothing changes.
 *
 * @param ticks so far
 * @param step the step
 * @param ids of pieces of the step
 * @returns new ticks
 * @example untick({ rip: { pieces: ['A1', 'A2'], at: 0 } }, { id: 'rip', pieces: [{ id: 'A1' }, { id: 'A2' }] }, ['A1'])
 *   // => { rip: { pieces: ['A2'], at: 0 } }
 */
export function untick(ticks: Ticks, step: Step, ids: readonly string[]): Ticks {
  const before = ticks[step.id];
  if (!before?.pieces.some((id) => ids.includes(id))) return ticks;
  return orNone(ticks, step, { ...before, pieces: before.pieces.filter((id) => !ids.includes(id)) });
}

/**
 * Leaves the rest of a step out, for a reason.
 *
 * @param ticks so far
 * @param step the step
 * @param skipped why
 * @param now ms since the epoch
 * @returns new ticks
 * @example skip({}, { id: 'rip' }, 'ripped at the yard', 0) // => { rip: { skipped: 'ripped at the yard', at: 0 } }
 */
export const skip = (ticks: Ticks, step: Step, skipped: string, now: number): Ticks => ({
  ...ticks,
  [step.id]: { pieces: ticks[step.id]?.pieces ?? [], skipped, at: now },
});

/**
 * Takes back what settled a step: its skip, after which what was ticked stays ticked, or else all its ticks.
 *
 * @param ticks so far
 * @param step the step
 * @returns new ticks
 * @example takeBack({ rip: { pieces: ['A1'], skipped: 'too late', at: 0 } }, { id: 'rip' })
 *   // => { rip: { pieces: ['A1'], at: 0 } }
 */
export function takeBack(ticks: Ticks, step: Step): Ticks {
  const { pieces = [], skipped, at = 0 } = ticks[step.id] ?? {};
  return orNone(ticks, step, { pieces: skipped === undefined ? [] : pieces, at });
}

/** The step at these ticks; as if it had never been begun when they say nothing. */
function orNone(ticks: Ticks, step: Step, left: StepTicks): Ticks {
  const { [step.id]: _, ...others } = ticks;
  return left.pieces.length === 0 && left.skipped === undefined ? others : { ...ticks, [step.id]: left };
}

/**
 * How many of the steps are settled.
 *
 * @param ticks so far
 * @param steps of the list, in order
 * @returns a count
 * @example settledCount({ rip: { pieces: [], at: 0 } }, [{ id: 'rip' }, { id: 'joint' }]) // => 1
 */
export const settledCount = (ticks: Ticks, steps: readonly Step[]): number =>
  steps.filter((step) => isSettled(ticks, step)).length;

/**
 * Whether there are steps, and nothing of them is left to do.
 *
 * @param ticks so far
 * @param steps of the list, in order
 * @returns yes or no
 * @example isThrough({ rip: { pieces: [], at: 0 } }, [{ id: 'rip' }, { id: 'joint' }]) // => false
 */
export const isThrough = (ticks: Ticks, steps: readonly Step[]): boolean =>
  steps.length > 0 && steps.every((step) => isSettled(ticks, step));

/**
 * The place of the first step with something left to do; of the last one when there is none.
 *
 * @param ticks so far
 * @param steps of the list, in order
 * @returns a place, from 0
 * @example nextPlace({ rip: { pieces: [], at: 0 } }, [{ id: 'rip' }, { id: 'joint' }]) // => 1
 */
export function nextPlace(ticks: Ticks, steps: readonly Step[]): number {
  const next = steps.findIndex((step) => !isSettled(ticks, step));
  return next < 0 ? Math.max(0, steps.length - 1) : next;
}
