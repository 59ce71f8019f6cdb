import { isSettled } from '../../core/steps/progress.ts';
import type { Change } from '../../store/commit.ts';
import type { Milling } from '../../store/records/milling.ts';
import type { Timer } from '../../store/records/timer.ts';
import { writeFrom } from '../../store/write.ts';
import { planAfter } from './plan-progress.ts';
import { inputOfRun, stepsOfRun } from './steps-of-run.ts';

/**
 * Edits a run, tells its plan what is cut and what is spoilt, and ends the waits of steps that are settled by it. Rejects
 * when the phone did not take it.
 */
export function changeRun(id: string, edit: (run: Milling) => Milling): Promise<unknown> {
  return writeFrom(['milling', 'plan', 'timer'], async (stored) => {
    const before = await stored.get('milling', id);
    if (!before) return [];
    const run = edit(before);
    const changes: Change[] = [{ kind: 'milling', put: run }];
    const plan = await stored.get('plan', run.planId);
    const steps = stepsOfRun(run);
    const told = plan && planAfter(plan, inputOfRun(run), steps, run.ticks, run.lost ?? {}, before.lost);
    if (told && JSON.stringify(told) !== JSON.stringify(plan)) changes.push({ kind: 'plan', put: told });
    const settled = steps.filter((step) => isSettled(run.ticks, step) && !isSettled(before.ticks, step));
    const ids = settled.map((step) => step.id);
    for (const timer of await stored.where('timer', 'for.id', id))
      if (timer.doneAt === undefined && ids.includes(timer.step ?? ''))
        changes.push({ kind: 'timer', put: { ...timer, doneAt: Date.now() } as Timer });
    return changes;
  });
}

/** Strips that came to nothing, with the reason; without one they are good after all. */
export const loseStrips = (run: Milling, strips: readonly string[], why: string | undefined): Promise<unknown> =>
  changeRun(run.id, (now) => {
    const others = Object.entries(now.lost ?? {}).filter(([id]) => !strips.includes(id));
    const own = why === undefined ? [] : strips.map((id) => [id, why] as const);
    return { ...now, lost: Object.fromEntries([...others, ...own]) };
  });
