import { type Outcome, problem } from '../answer/problem.ts';
import type { MillingStep } from './milling-step.ts';

/** How far one step is: which of its pieces are done, and why it was skipped, if it was. */
export interface StepProgress {
  readonly done: readonly string[];
  readonly skipped?: string;
}

/** How far a run is, by step id. Ticks of steps or pieces that a new plan no longer has do no harm. */
export type Progress = Readonly<Record<string, StepProgress>>;

const of = (progress: Progress, step: MillingStep): StepProgress => progress[step.id] ?? { done: [] };

const isPieceOf = (step: MillingStep, piece: string): boolean => step.pieces.some(({ id }) => id === piece);

/** Ticks a piece of a step; ticking it again changes nothing. A piece that the step doesn't have is a problem. */
export function tick(progress: Progress, step: MillingStep, piece: string): Outcome<Progress> {
  if (!isPieceOf(step, piece)) return problem('piece', 'This piece is not part of the step.');
  const { done } = of(progress, step);
  return done.includes(piece)
    ? progress
    : { ...progress, [step.id]: { ...of(progress, step), done: [...done, piece] } };
}

/** Takes a tick back; without one nothing changes. */
export function untick(progress: Progress, step: MillingStep, piece: string): Progress {
  const before = of(progress, step);
  if (!before.done.includes(piece)) return progress;
  return { ...progress, [step.id]: { ...before, done: before.done.filter((id) => id !== piece) } };
}

/** Ticks every piece of a step. */
export function tickAll(progress: Progress, step: MillingStep): Progress {
  return { ...progress, [step.id]: { ...of(progress, step), done: step.pieces.map(({ id }) => id) } };
}

/** Leaves the rest of a step out; the reason is kept with the run. */
export function skip(progress: Progress, step: MillingStep, reason: string): Outcome<Progress> {
  const said = reason.trim();
  if (said === '') return problem('reason', 'Say in a word why, so that you know it next week.');
  return { ...progress, [step.id]: { ...of(progress, step), skipped: said } };
}

/** Takes a skip back; what was ticked stays ticked. */
export function unskip(progress: Progress, step: MillingStep): Progress {
  const { done, skipped } = of(progress, step);
  return skipped === undefined ? progress : { ...progress, [step.id]: { done } };
}

/** How many of a step's pieces are done: 14 of 22. */
export function doneOf(progress: Progress, step: MillingStep): { readonly done: number; readonly of: number } {
  const { done } = of(progress, step);
  return { done: step.pieces.filter(({ id }) => done.includes(id)).length, of: step.pieces.length };
}

/** Whether nothing of a step is left to do. */
export function isSettled(progress: Progress, step: MillingStep): boolean {
  const { done, of: all } = doneOf(progress, step);
  return of(progress, step).skipped !== undefined || done === all;
}

/** The first step with something left to do, or null when the run is finished. */
export function nextStep(steps: readonly MillingStep[], progress: Progress): MillingStep | null {
  return steps.find((step) => !isSettled(progress, step)) ?? null;
}

/** The step before this one, or null at the first. */
export function stepBefore(steps: readonly MillingStep[], step: MillingStep): MillingStep | null {
  return steps[steps.findIndex(({ id }) => id === step.id) - 1] ?? null;
}
