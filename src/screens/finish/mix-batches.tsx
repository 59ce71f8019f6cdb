import { askToNotify } from '../../app/ask-to-notify.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { mixFor } from '../../core/finishing/two-part-mix.ts';
import type { Timer } from '../../store/records/timer.ts';
import { timers as kept } from '../../store/timers.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { potLifePhase, timersOf } from './coat-timers.ts';
import type { KeptStep, StepMix } from './finish-steps.ts';
import { MixShown } from './mix-shown.tsx';

interface Props {
  finishId: string;
  /** What is coated. */
  name: string;
  step: KeptStep;
  mix: StepMix;
  coatLitres: number;
  timers: readonly Timer[];
}

/** The batches of one coat: what goes into each, and the pot life that runs from its mixing. */
export function MixBatches({ finishId, name, step, mix, coatLitres, timers }: Props) {
  const { ratio, batches, potLifeSeconds } = mix;
  const each = mixFor('all', coatLitres / batches, ratio);
  if (isProblem(each)) return null;
  const mixed = new Set(timers.map(({ phase }) => phase));
  const phases = Array.from({ length: batches }, (_, index) => potLifePhase(step, index + 1));
  const next = phases.findIndex((phase) => !mixed.has(phase));
  const start = () => {
    void askToNotify();
    const wait = { name: phases[next] ?? '', leastSeconds: potLifeSeconds ?? 0 };
    // A write that fails is kept and shown by the shell.
    return kept.addMany(timersOf(finishId, [wait], name, Date.now())).catch(() => {});
  };
  return (
    <Card title={`Mix ${batches} ${batches === 1 ? 'batch' : 'batches'}`}>
      <MixShown of={each} />
      {potLifeSeconds !== undefined &&
        (next < 0 ? (
          <p>All mixed.</p>
        ) : (
          <Button look="big" onClick={start}>
            Batch {next + 1} is mixed
          </Button>
        ))}
    </Card>
  );
}
