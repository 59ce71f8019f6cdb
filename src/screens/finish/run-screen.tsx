import { useState } from 'preact/hooks';
import { useFlow } from '../../app/flow.ts';
import { useLive } from '../../app/live.ts';
import { routeTo } from '../../app/routes.ts';
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
import { begunBy, nextStepAt, overBy, skipStep, throughOf, tickStep, timersOf } from './tick-step.ts';

/** A finish step by step: coats with their waits, and the rags after every one with a drying oil. */
export function RunScreen({ finish, pieces }: { finish: Finish; pieces: readonly Piece[] }) {
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
        await timers.putMany(overBy(running, step, now).map((timer) => ({ ...timer, doneAt: now })));
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
        const { coatLitres } = kept(step);
        return (
          <>
            <FinishTimers timers={running} />
            {coatLitres !== undefined && (
              <p>
                This coat takes about{' '}
                <b>
                  <Amount of={litres(coatLitres)} />
                </b>
                .
              </p>
            )}
          </>
        );
      }}
    >
      {finish.finishedAt !== undefined && (
        <p class="answer">
          <span class="figure words">All steps are through</span>
          {piece && (
            <a class="button" href={routeTo('piece', piece.id)}>
              {piece.name}
            </a>
          )}
        </p>
      )}
    </StepFlow>
  );
}
