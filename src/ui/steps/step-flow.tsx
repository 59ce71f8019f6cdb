import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { isSettled, type Ticks, throughOf } from '../../core/steps/progress.ts';
import { Fold } from '../fold.tsx';
import { Length } from '../length.tsx';
import { Say } from '../say.tsx';
import { Screen } from '../screen.tsx';
import { Cautions } from './cautions.tsx';
import type { FlowStep } from './flow-step.ts';
import { SkipStep } from './skip-step.tsx';
import './step-flow.css';
import { StepStick } from './step-stick.tsx';

interface Props {
  /** What is worked on: stands above the step. */
  kicker: string;
  steps: readonly FlowStep[];
  ticks: Ticks;
  /** The place of the step that is shown. */
  at: number;
  onAt(at: number): void;
  onTick(step: FlowStep, pieceIds: readonly string[], on: boolean): void;
  /** Ticks what is left of the step. */
  onDone(step: FlowStep): void;
  onSkip(step: FlowStep, reason: string): void;
  /** Takes a skip, or the tick of a step without pieces, back. */
  onTakeBack(step: FlowStep): void;
  /** What a screen adds to the step: a timer, a measured value. */
  extra?(step: FlowStep): ComponentChildren;
  /** Stands below the step: for example what is to be done when the list is through. */
  children?: ComponentChildren;
}

/** One step at a time, large; ticked piece by piece, or all at once with the thumb. */
export function StepFlow(props: Props) {
  const { kicker, steps, ticks, at, onAt, onDone, onSkip, onTakeBack, extra, children } = props;
  useEffect(() => scrollTo(0, 0), [at]);
  const step = steps[at];
  if (!step) return null;
  const reason = ticks[step.id]?.skipped;
  const settled = isSettled(ticks, step);
  const last = at === steps.length - 1;
  const next = () => {
    if (!settled) onDone(step);
    if (!last) onAt(at + 1);
  };
  return (
    <Screen
      question={`Step ${at + 1} of ${steps.length}`}
      kicker={kicker}
      action={
        <>
          <button type="button" class="button big" disabled={at === 0} onClick={() => onAt(at - 1)}>
            Back
          </button>
          <button type="button" class="button big now" onClick={next} disabled={settled && last}>
            {settled ? (last ? 'All done' : 'Next step') : last ? 'Done' : 'Done, next'}
          </button>
        </>
      }
    >
      <StepStick steps={steps} at={at} ticks={ticks} />
      <section class="step" aria-live="polite">
        {step.machine && <p class="kicker">At the {step.machine}</p>}
        <h2>
          <Say phrase={step.title} />
        </h2>
        <p class="todo">
          <Say phrase={step.todo} />
        </p>
        <StepTarget of={step.target} />
        {step.setting && (
          <p>
            <b>Set once:</b> <Say phrase={step.setting} />
          </p>
        )}
        <Cautions of={step.cautions} />
        {reason !== undefined && <p class="answer wait">Skipped: {reason}</p>}
        {extra?.(step)}
        <StepPieces {...props} step={step} />
        {(reason !== undefined || (settled && step.pieces.length === 0)) && (
          <button type="button" class="button" onClick={() => onTakeBack(step)}>
            {reason === undefined ? 'Not done yet' : 'Do it after all'}
          </button>
        )}
        {step.why && (
          <Fold label="Why">
            <p>
              <Say phrase={step.why} />
            </p>
          </Fold>
        )}
        {!settled && <SkipStep key={step.id} onSkip={(why) => onSkip(step, why)} />}
      </section>
      {children}
    </Screen>
  );
}

function StepTarget({ of: target }: { of: FlowStep['target'] }) {
  if (!target) return null;
  const tolerance = (
    <span class="soft small">
      give or take <Length mm={target.tolerance} />
    </span>
  );
  if (target.value === undefined) {
    return (
      <p class="soft">
        Each piece to its own {target.dimension}, {tolerance}.
      </p>
    );
  }
  return (
    <p class="answer">
      <span class="soft">{target.dimension}</span>
      <span class="figure">
        <Length mm={target.value} />
      </span>
      {tolerance}
    </p>
  );
}

function StepPieces({ step, ticks, onTick }: Pick<Props, 'ticks' | 'onTick'> & { step: FlowStep }) {
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
            onChange={(event) => onTick(step, [piece.id], event.currentTarget.checked)}
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
