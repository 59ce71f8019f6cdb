import { useState } from 'preact/hooks';
import { useFlow } from '../../app/flow.ts';
import { useLive } from '../../app/live.ts';
import { litres } from '../../core/answer/quantity.ts';
import { finishes } from '../../store/finishes.ts';
import type { Finish } from '../../store/records/finish.ts';
import type { Piece } from '../../store/records/piece.ts';
import { timers } from '../../store/timers.ts';
import { finishById } from '../../tables/finishes.ts';
import { Amount } from '../../ui/amount.tsx';
import type { FlowStep } from '../../ui/steps/flow-step.ts';
import { StepFlow } from '../../ui/steps/step-flow.tsx';
import { flowStep, type KeptStep, stepsOf } from './finish-steps.ts';
import { FinishTimers } from './finish-timers.tsx';
import { MixBatches } from './mix-batches.tsx';
import { ThisFinish } from './this-finish.tsx';
import { begunBy, nextStepAt, overBy, skipStep, throughOf, tickStep, timersOf } from './tick-step.ts';

interface Props {
  finish: Finish;
  pieces: readonly Piece[];
  /** Plans another finish for the same piece. */
  onAgain(): void;
}

/** A finish step by step: coats with their waits, and the rags after every one with a drying oil. */
export function RunScreen({ finish, pieces, onAgain }: Props) {
  useFlow();
  const running = useLive(['timer'], () => timers.where('for.id', finish.id), finish.id) ?? [];
  const [at, setAt] = useState(() => nextStepAt(finish));
  const steps = stepsOf(finish);
  const piece = pieces.find(({ id }) => id === finish.pieceId);
  const kept = ({ id }: FlowStep) => steps.find((step) => step.id === id) as KeptStep;

  const tick = async (step: KeptStep, pieceIds: readonly string[], on: boolean) => {
    const now = Date.now();
    try {
      if (on) {
        await timers.addMany(timersOf(finish.id, step, pieceIds, now));
        await timers.putMany(overBy(running, finish, step, pieceIds, now).map((timer) => ({ ...timer, doneAt: now })));
      } else {
        for (const { id } of begunBy(running, finish.ticks[step.id]?.at)) await timers.remove(id);
      }
      await finishes.change(finish.id, (record) => tickStep(record, step, pieceIds, on, now));
    } catch {
      // Not stored: the shell keeps the change and shows it.
    }
  };
  const skip = (step: KeptStep, reason: string) =>
    void finishes.change(finish.id, (record) => skipStep(record, step, reason, Date.now())).catch(() => {});

  return (
    <StepFlow
      kicker={`${finishById(finish.kind)?.name ?? finish.kind} · ${piece?.name ?? 'piece deleted'}`}
      steps={steps.map(flowStep)}
      at={at}
      onAt={setAt}
      through={({ id }) => throughOf(finish.ticks, id)}
      skipped={({ id }) => finish.ticks[id]?.skipped}
      onTick={(step, pieceIds, on) => void tick(kept(step), pieceIds, on)}
      onDone={(step) => {
        const through = throughOf(finish.ticks, step.id);
        const left = step.pieces.map(({ id }) => id).filter((id) => !through.has(id));
        void tick(kept(step), left, true);
      }}
      onSkip={(step, reason) => skip(kept(step), reason)}
      extra={(step) => {
        const { coatLitres, mix } = kept(step);
        return (
          <>
            <FinishTimers timers={running} />
            {coatLitres !== undefined && (
              <p>
                The whole coat takes about{' '}
                <b>
                  <Amount of={litres(coatLitres)} />
                </b>
                .
              </p>
            )}
            {coatLitres !== undefined && mix && (
              <MixBatches finishId={finish.id} step={kept(step)} mix={mix} coatLitres={coatLitres} timers={running} />
            )}
          </>
        );
      }}
    >
      <ThisFinish finish={finish} piece={piece} running={running} onAgain={onAgain} />
    </StepFlow>
  );
}
