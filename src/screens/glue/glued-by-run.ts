import { isSettled, throughOf } from '../../core/steps/progress.ts';
import type { Milling } from '../../store/records/milling.ts';
import { stepsOfRun } from '../mill/steps-of-run.ts';
import { asMilled } from './as-milled.ts';

/** Of these stages, by id, those of panels that a run's own steps have glued; it may part a panel otherwise than they do. */
export function gluedByRun(stages: readonly string[], run: Milling | undefined): string[] {
  const clamping = run ? stepsOfRun(run).filter(({ machine }) => machine === 'clamps') : [];
  return stages.filter((stage) => {
    const panel = asMilled(stage).replace(/[a-z]$/, '');
    const open = clamping.map((step) => {
      const through = throughOf(run?.ticks ?? {}, step);
      const own = step.pieces.filter(({ id }) => id.replace(/[a-z]$/, '') === panel);
      return isSettled(run?.ticks ?? {}, step) ? own.map(() => false) : own.map(({ id }) => !through.has(id));
    });
    return open.flat().length > 0 && !open.flat().includes(true);
  });
}
