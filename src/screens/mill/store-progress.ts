import type { Change } from '../../store/commit.ts';
import type { Milling } from '../../store/records/milling.ts';
import { writeFrom } from '../../store/write.ts';
import { planAfter } from './plan-progress.ts';
import { inputOfRun, stepsOfRun } from './steps-of-run.ts';

/** Edits a run, and tells its plan what is cut and what is spoilt. Rejects when the phone did not take it. */
export async function changeRun(id: string, edit: (run: Milling) => Milling): Promise<void> {
  await writeFrom(['milling', 'plan'], async (stored) => {
    const before = await stored.get('milling', id);
    if (!before) return [];
    const run = edit(before);
    const changes: Change[] = [{ kind: 'milling', put: run }];
    const plan = await stored.get('plan', run.planId);
    const told = plan && planAfter(plan, inputOfRun(run), stepsOfRun(run), run.ticks, run.lost ?? {}, before.lost);
    if (told && JSON.stringify(told) !== JSON.stringify(plan)) changes.push({ kind: 'plan', put: told });
    return changes;
  });
}

/** Strips that came to nothing, with the reason; without one they are good after all. */
export const loseStrips = (run: Milling, strips: readonly string[], why: string | undefined): Promise<void> =>
  changeRun(run.id, (now) => {
    const others = Object.entries(now.lost ?? {}).filter(([id]) => !strips.includes(id));
    const own = why === undefined ? [] : strips.map((id) => [id, why] as const);
    return { ...now, lost: Object.fromEntries([...others, ...own]) };
  });
