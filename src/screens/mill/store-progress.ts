import { millings } from '../../store/millings.ts';
import { plans } from '../../store/plans.ts';
import type { Milling } from '../../store/records/milling.ts';
import type { Plan } from '../../store/records/plan.ts';
import { planAfter } from './plan-progress.ts';
import { inputOfRun, stepsOfRun } from './steps-of-run.ts';

/** Edits a run, and tells its plan what is cut and what is spoilt. Rejects when the phone did not take it. */
export async function changeRun(id: string, edit: (run: Milling) => Milling): Promise<void> {
  const run = await millings.change(id, edit);
  if (!run) return;
  const told = (plan: Plan) => planAfter(plan, inputOfRun(run), stepsOfRun(run), run.ticks, run.lost ?? {});
  const plan = await plans.get(run.planId);
  if (plan && JSON.stringify(told(plan)) !== JSON.stringify(plan)) await plans.change(plan.id, told);
}

/** Strips that came to nothing, with the reason; without one they are good after all. */
export const loseStrips = (run: Milling, strips: readonly string[], why: string | undefined): Promise<void> =>
  changeRun(run.id, (now) => {
    const others = Object.entries(now.lost ?? {}).filter(([id]) => !strips.includes(id));
    const own = why === undefined ? [] : strips.map((id) => [id, why] as const);
    return { ...now, lost: Object.fromEntries([...others, ...own]) };
  });
