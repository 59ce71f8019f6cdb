import { followReadings } from '../../core/milling/follow-readings.ts';
import { layBlanks } from '../../core/milling/lay-blanks.ts';
import type { MillingInput } from '../../core/milling/milling-input.ts';
import type { MillingStep } from '../../core/milling/milling-step.ts';
import type { StepTicks } from '../../core/steps/progress.ts';
import type { Milling } from '../../store/records/milling.ts';
import type { Json } from '../../store/records/record.ts';
import { withTicks } from '../../store/records/with-ticks.ts';
import { inputOfRun, stepsOfRun } from './steps-of-run.ts';

/** A run that goes on by another plan: what is done stays done where the new sequence has the same work on the same wood. */
export function onNewPlan(
  run: Milling,
  planId: string,
  input: MillingInput,
  steps: readonly MillingStep[],
  now: number,
): Milling {
  const before = new Map(stepsOfRun(run).map((step) => [step.id, step]));
  const ticks: Record<string, StepTicks> = {};
  for (const step of steps) {
    const old = before.get(step.id);
    const ticked = run.ticks[step.id];
    if (!old || !ticked) continue;
    const pieces = ticked.pieces.filter((id) => Math.abs(targetAt(old, id) - targetAt(step, id)) < 0.01);
    if (pieces.length > 0 || ticked.skipped !== undefined) ticks[step.id] = { ...ticked, pieces };
  }
  const strips = new Set(layBlanks(input).flatMap((blank) => blank.strips.map(({ id }) => id)));
  const lost = Object.fromEntries(Object.entries(run.lost ?? {}).filter(([id]) => strips.has(id)));
  const next = {
    ...run,
    planId,
    lost,
    input: input as unknown as Json,
    steps: steps as unknown as readonly Json[],
    measured: followReadings(steps, run.measured ?? []).counted,
  };
  return withTicks(next, ticks, now);
}

/**
 * The way back from `went`, to which a run came from `before`: what was left out on the way comes back, and what has been
 * ticked, taken back, measured or spoilt since stays.
 */
export function backToPlan(run: Milling, before: Milling, went: Milling, now: number): Milling {
  const back = onNewPlan(run, before.planId, inputOfRun(before), stepsOfRun(before), now);
  const leftOut = <T>(of: readonly T[] = [], kept: readonly T[] = []) => of.filter((one) => !kept.includes(one));
  const ticks: Record<string, StepTicks> = { ...back.ticks };
  for (const [id, tick] of Object.entries(before.ticks)) {
    const pieces = leftOut(tick.pieces, went.ticks[id]?.pieces);
    const own = ticks[id] ?? tick;
    if (pieces.length > 0 || !went.ticks[id]) ticks[id] = { ...own, pieces: [...pieces, ...(ticks[id]?.pieces ?? [])] };
  }
  const measured = [...leftOut(before.measured, went.measured), ...(run.measured ?? [])];
  return withTicks({ ...back, lost: { ...before.lost, ...back.lost }, measured }, ticks, now);
}

/** What a piece is brought to at a step: 0 where nothing is measured, no number where the step doesn't have it. */
function targetAt({ pieces, target }: MillingStep, pieceId: string): number {
  const piece = pieces.find(({ id }) => id === pieceId);
  return piece ? (piece.target ?? target?.value ?? 0) : Number.NaN;
}
