import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import {
  isSettled,
  nextPlace,
  skip,
  type Ticks,
  takeBack,
  throughOf,
  tick,
  tickAll,
  untick,
} from '../../core/steps/progress.ts';
import { Button } from '../button.tsx';
import { Fold } from '../fold.tsx';
import { Length } from '../length.tsx';
import { Say } from '../say.tsx';
import { Screen } from '../screen.tsx';
import { WithReason } from '../with-reason.tsx';
import { Cautions } from './cautions.tsx';
import type { FlowStep } from './flow-step.ts';
import './step-flow.css';
import { StepSaid } from './step-said.tsx';
import { StepStick } from './step-stick.tsx';

export type TicksEdit = (ticks: Ticks, now: number) => Ticks;

/** What a tap on a step was: pieces done, the step skipped, or one of the two taken back. */
export type Did = { readonly done: readonly string[] } | 'skip' | 'back';

interface Props<S extends FlowStep> {
  /** What is worked on: stands above the step. */
  kicker: string;
  steps: readonly S[];
  ticks: Ticks;
  /** The place of the step that is shown. */
  at: number;
  onAt(at: number): void;
  /** Keeps what a tap did to a step's ticks, as they stand when it is kept; `did` says what it was. */
  onTicks(step: S, edit: TicksEdit, did: Did): void;
  /** What a screen adds to the step: a timer, a measured value. */
  extra?(step: S): ComponentChildren;
  /** Stands below the step: for example what is to be done when the list is through. */
  children?: ComponentChildren;
}

/** One step at a time, large; ticked piece by piece, or all at once with the thumb. */
export function StepFlow<S extends FlowStep>(props: Props<S>) {
  const { kicker, steps, ticks, at, onAt, onTicks, extra, children } = props;
  useEffect(() => scrollTo(0, 0), [at]);
  const step = steps[at];
  if (!step) return null;
  const reason = ticks[step.id]?.skipped;
  const settled = isSettled(ticks, step);
  // After the last one whatever was left open before it, for example by a newer plan.
  const onward = at < steps.length - 1 ? at + 1 : nextPlace(ticks, steps);
  const last = onward === at;
  const next = () => {
    if (!settled) {
      const through = throughOf(ticks, step);
      const ids = step.pieces.flatMap(({ id }) => (through.has(id) ? [] : id));
      onTicks(step, (kept, now) => tickAll(kept, step, now), { done: ids });
    }
    if (!last) onAt(onward);
  };
  return (
    <Screen
      question={`Step ${at + 1} of ${steps.length}`}
      kicker={kicker}
      action={
        <>
          <Button look="big" disabled={at === 0} onClick={() => onAt(at - 1)}>
            Back
          </Button>
          <Button look="big now" onClick={next} disabled={settled && last}>
            {settled ? (last ? 'All done' : 'Next step') : last ? 'Done' : 'Done, next'}
          </Button>
        </>
      }
    >
      <StepStick steps={steps} at={at} ticks={ticks} />
      <section class="step" aria-live="polite">
        <StepSaid of={step} />
        <Cautions of={step.cautions} />
        {reason !== undefined && <p class="answer wait">Skipped: {reason}</p>}
        {extra?.(step)}
        <StepPieces {...props} step={step} />
        {(reason !== undefined || (settled && step.pieces.length === 0)) && (
          <Button onClick={() => onTicks(step, (kept) => takeBack(kept, step), 'back')}>
            {reason === undefined ? 'Not done yet' : 'Do it after all'}
          </Button>
        )}
        {step.why && (
          <Fold label="Why">
            <p>
              <Say phrase={step.why} />
            </p>
          </Fold>
        )}
        {!settled && (
          <WithReason
            key={step.id}
            label="Skip this step"
            ask="Reason"
            action="Skip it"
            onReason={(why) => onTicks(step, (kept, now) => skip(kept, step, why, now), 'skip')}
          />
        )}
      </section>
      {children}
    </Screen>
  );
}

function StepPieces<S extends FlowStep>({ step, ticks, onTicks }: Pick<Props<S>, 'ticks' | 'onTicks'> & { step: S }) {
  if (step.pieces.length === 0) return null;
  const through = throughOf(ticks, step);
  return (
    <fieldset class="pieces">
      <legend>
        {through.size} of {step.pieces.length} through
      </legend>
      {step.pieces.map((piece) => (
        <label class="tick" key={piece.id}>
          <input
            type="checkbox"
            checked={through.has(piece.id)}
            onChange={(event) => {
              const ids = [piece.id];
              if (event.currentTarget.checked) onTicks(step, (kept, now) => tick(kept, step, ids, now), { done: ids });
              else onTicks(step, (kept) => untick(kept, step, ids), 'back');
            }}
          />
          <span>{piece.label}</span>
          {piece.target !== undefined && (
            <b>
              <Length mm={piece.target} />
            </b>
          )}
        </label>
      ))}
    </fieldset>
  );
}
