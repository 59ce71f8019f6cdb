import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { coatSchedule } from '../../core/finishing/coat-schedule.ts';
import type { FinishLabel } from '../../core/finishing/finish-label.ts';
import type { Finish } from '../../store/records/finish.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Fields } from '../../store/records/record.ts';
import { grits } from '../../tables/abrasives.ts';
import type { FinishForm } from './finish-form.ts';
import { keptSteps, type StepMix } from './finish-steps.ts';
import type { FinishPlan } from './plan-finish.ts';
import type { ReadFinish } from './read-finish-form.ts';
import type { ReadMix } from './read-mix.ts';

/** The finish as it is kept once it starts: its figures as they are now, and its steps. The first piece owns it. */
export function startedFinish(
  pieces: readonly Piece[],
  form: FinishForm,
  read: ReadFinish,
  plan: Outcome<FinishPlan>,
): Outcome<Fields<Finish>> {
  if (isProblem(plan)) return plan;
  const steps = coatSchedule({
    finish: read.finish,
    coats: read.coats,
    firstGrit: read.firstGrit,
    gritsOwned: grits.map(({ grit }) => grit).filter((grit) => !form.gritsMissing.includes(grit)),
    sections: read.sections,
    sealed: read.wood === 'sealed',
    beforeAssembly: form.beforeAssembly,
    airFactor: read.airFactor.value,
  });
  if (isProblem(steps)) return steps;
  const { purchase, amount, coatedM2 } = plan;
  const mix = stepMix(read.mix);
  return {
    pieceId: pieces[0]?.id ?? '',
    kind: read.finish.id,
    label: labelNumbers(read.label),
    coats: read.coats,
    area: coatedM2,
    containers: purchase?.value.buy ?? [],
    steps: keptSteps(
      steps,
      pieces,
      amount.value.coats.map(({ likely: coatLitres }) => ({ coatLitres, ...(mix && { mix }) })),
    ),
    ticks: {},
  };
}

/** The can's figures as plain numbers: `coverageLeast`, `coverageMost`. */
const labelNumbers = (label: FinishLabel): Record<string, number> =>
  Object.fromEntries(
    Object.entries(label).flatMap(([name, { least, most }]) => [
      [`${name}Least`, least],
      [`${name}Most`, most],
    ]),
  );

function stepMix(mix: ReadMix | undefined): StepMix | undefined {
  if (!mix?.ratio) return undefined;
  const { ratio, potLifeSeconds, batches } = mix;
  return { ratio, batches: batches?.value ?? 1, ...(potLifeSeconds !== undefined && { potLifeSeconds }) };
}
