import { useState } from 'preact/hooks';
import { askToNotify } from '../../app/ask-to-notify.ts';
import { useFlow } from '../../app/flow.ts';
import { useLive } from '../../app/live.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { litres } from '../../core/answer/quantity.ts';
import { nextPlace, skip, type Ticks, takeBack, throughOf, tick, tickAll, untick } from '../../core/steps/progress.ts';
import { finishes } from '../../store/finishes.ts';
import type { Finish } from '../../store/records/finish.ts';
import type { Piece } from '../../store/records/piece.ts';
import { timers } from '../../store/timers.ts';
import { finishById } from '../../tables/finishes.ts';
import { Amount } from '../../ui/amount.tsx';
import type { FlowStep } from '../../ui/steps/flow-step.ts';
import { StepFlow } from '../../ui/steps/step-flow.tsx';
import { begunBy, overBy, timersOf } from './coat-timers.ts';
import { flowStep, type KeptStep, stepsOf } from './finish-steps.ts';
import { FinishTimers } from './finish-timers.tsx';
import { MixBatches } from './mix-batches.tsx';
import { ThisFinish } from './this-finish.tsx';
import { withTicks } from './with-ticks.ts';

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
  const steps = stepsOf(finish);
  const [at, setAt] = useState(() => nextPlace(finish.ticks, steps));
  const piece = pieces.find(({ id }) => id === finish.pieceId);
  const kept = ({ id }: FlowStep) => steps.find((step) => step.id === id) as KeptStep;

  /** Keeps progress as it is stored now; a write that fails is kept and shown by the shell. */
  const keep = (edit: (ticks: Ticks) => Outcome<Ticks>, now: number) =>
    finishes.change(finish.id, (record) => {
      const ticks = edit(record.ticks);
      return isProblem(ticks) ? record : withTicks(record, ticks, now);
    });

  const done = async (step: KeptStep, pieceIds: readonly string[]) => {
    if (step.waits.length > 0) {
      // Both may only be asked for from a tap.
      void askToNotify();
    }
    const now = Date.now();
    const names = step.pieces.filter(({ id }) => pieceIds.includes(id)).map(({ label }) => label);
    try {
      await timers.addMany(timersOf(finish.id, step, names.join(', ') || (piece?.name ?? ''), now));
      await timers.putMany(overBy(running, finish, step, pieceIds, now).map((timer) => ({ ...timer, doneAt: now })));
      await keep(
        (ticks) =>
          step.pieces.length === 0
            ? tickAll(ticks, step, now)
            : pieceIds.reduce<Ticks>((so, id) => {
                const next = tick(so, step, id, now);
                return isProblem(next) ? so : next;
              }, ticks),
        now,
      );
    } catch {
      // Not stored: the shell keeps the change and shows it.
    }
  };
  const undone = async (step: KeptStep, edit: (ticks: Ticks) => Ticks) => {
    try {
      for (const { id } of begunBy(running, finish.ticks[step.id]?.at)) await timers.remove(id);
      await keep(edit, Date.now());
    } catch {
      // Not stored: the shell keeps the change and shows it.
    }
  };

  return (
    <StepFlow
      kicker={`${finishById(finish.kind)?.name ?? finish.kind} · ${piece?.name ?? 'piece deleted'}`}
      steps={steps.map(flowStep)}
      ticks={finish.ticks}
      at={at}
      onAt={setAt}
      onTick={(step, pieceIds, on) =>
        void (on
          ? done(kept(step), pieceIds)
          : undone(kept(step), (ticks) => pieceIds.reduce((so, id) => untick(so, step, id), ticks)))
      }
      onDone={(step) => {
        const through = throughOf(finish.ticks, step);
        void done(
          kept(step),
          step.pieces.map(({ id }) => id).filter((id) => !through.has(id)),
        );
      }}
      onSkip={(step, reason) => {
        const now = Date.now();
        void keep((ticks) => skip(ticks, step, reason, now), now).catch(() => {});
      }}
      onTakeBack={(step) => void undone(kept(step), (ticks) => takeBack(ticks, step))}
      extra={(step) => {
        const { coatLitres, mix } = kept(step);
        return (
          <>
            <FinishTimers timers={running} steps={steps} />
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
              <MixBatches
                finishId={finish.id}
                name={piece?.name ?? ''}
                step={kept(step)}
                mix={mix}
                coatLitres={coatLitres}
                timers={running}
              />
            )}
          </>
        );
      }}
    >
      <ThisFinish finish={finish} piece={piece} running={running} onAgain={onAgain} />
    </StepFlow>
  );
}
