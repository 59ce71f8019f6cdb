import { useState } from 'preact/hooks';
import { askToNotify } from '../../app/ask-to-notify.ts';
import { useFlow } from '../../app/flow.ts';
import { useLive } from '../../app/live.ts';
import { leaveNotices } from '../../app/notices.ts';
import { nextPlace } from '../../core/steps/progress.ts';
import type { Finish } from '../../store/records/finish.ts';
import type { Piece } from '../../store/records/piece.ts';
import { timers } from '../../store/timers.ts';
import { finishById } from '../../tables/finishes.ts';
import { type Did, StepFlow, type TicksEdit } from '../../ui/steps/step-flow.tsx';
import { CoatTakes } from './coat-takes.tsx';
import { type KeptStep, shownSteps, stepsOf } from './finish-steps.ts';
import { FinishTimers } from './finish-timers.tsx';
import { MixBatches } from './mix-batches.tsx';
import { storeTick } from './store-tick.ts';
import { ThisFinish } from './this-finish.tsx';

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

  /** A write that fails is kept and shown by the shell. */
  const keep = (step: KeptStep, edit: TicksEdit, did: Did) => {
    const now = Date.now();
    // Sound and notices may only be asked for from a tap.
    if (typeof did === 'object' && step.waits.length > 0) void askToNotify();
    void storeTick(finish.id, step, edit, did, piece?.name ?? '', now).catch(() => {});
  };

  return (
    <StepFlow
      kicker={`${finishById(finish.kind)?.name ?? finish.kind} · ${piece?.name ?? 'piece deleted'}`}
      steps={shownSteps(finish)}
      ticks={finish.ticks}
      at={at}
      onAt={(next) => {
        setAt(next);
        leaveNotices();
      }}
      onTicks={({ kept }, edit, did) => keep(kept, edit, did)}
      extra={({ kept: step }) => {
        const { coatLitres, mix } = step;
        return (
          <>
            <FinishTimers timers={running} steps={steps} />
            <CoatTakes litres={coatLitres} />
            {coatLitres !== undefined && mix && (
              <MixBatches
                finishId={finish.id}
                name={piece?.name ?? ''}
                step={step}
                mix={mix}
                coatLitres={coatLitres}
                timers={running}
              />
            )}
          </>
        );
      }}
    >
      <ThisFinish finish={finish} piece={piece} onAgain={onAgain} />
    </StepFlow>
  );
}
