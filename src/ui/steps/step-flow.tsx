import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { sources } from '../../tables/sources.ts';
import { TextField } from '../fields.tsx';
import { Length } from '../length.tsx';
import { Say } from '../say.tsx';
import { Screen } from '../screen.tsx';
import type { FlowStep } from './flow-step.ts';
import './step-flow.css';

interface Props {
  /** What is worked on: stands above the step. */
  kicker: string;
  steps: readonly FlowStep[];
  /** The place of the step that is shown. */
  at: number;
  onAt(at: number): void;
  /** The pieces of a step that are through. */
  through(step: FlowStep): ReadonlySet<string>;
  /** Why a step was skipped. */
  skipped(step: FlowStep): string | undefined;
  onTick(step: FlowStep, pieceIds: readonly string[], on: boolean): void;
  /** Ticks what is left of the step. */
  onDone(step: FlowStep): void;
  onSkip(step: FlowStep, reason: string): void;
  /** What a screen adds to the step: a timer, a measured value. */
  extra?(step: FlowStep): ComponentChildren;
  /** Stands below the step: for example what is to be done when the list is through. */
  children?: ComponentChildren;
}

/** One step at a time, large; ticked piece by piece, or all at once with the thumb. */
export function StepFlow(props: Props) {
  const { kicker, steps, at, onAt, through, skipped, onTick, onDone, onSkip, extra, children } = props;
  const step = steps[at];
  if (!step) return null;
  const done = through(step);
  const left = step.pieces.filter(({ id }) => !done.has(id));
  const reason = skipped(step);
  const last = at === steps.length - 1;
  const finished = reason !== undefined || (left.length === 0 && done.size > 0);
  const next = () => {
    if (!finished) onDone(step);
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
          <button type="button" class="button big now" onClick={next} disabled={finished && last}>
            {finished ? (last ? 'All done' : 'Next step') : last ? 'Done' : 'Done, next'}
          </button>
        </>
      }
    >
      <StepStick steps={steps} at={at} through={through} skipped={skipped} />
      <section class="step" aria-live="polite">
        {step.machine && <p class="kicker">At the {step.machine}</p>}
        <h2>
          <Say phrase={step.title} />
        </h2>
        <p class="todo">
          <Say phrase={step.todo} />
        </p>
        {step.target?.value !== undefined && (
          <p class="answer">
            <span class="soft">{step.target.dimension}</span>
            <span class="figure">
              <Length mm={step.target.value} />
            </span>
            <span class="soft small">
              give or take <Length mm={step.target.tolerance} />
            </span>
          </p>
        )}
        {step.setting && (
          <p>
            <b>Set once:</b> <Say phrase={step.setting} />
          </p>
        )}
        {step.cautions.map(({ say, source }) => (
          <p class="caution">
            <span>
              <b>Caution.</b> <Say phrase={say} /> <span class="soft small">({sources[source].title})</span>
            </span>
          </p>
        ))}
        {reason !== undefined && (
          <p class="answer wait">
            <span>Skipped: {reason}</span>
          </p>
        )}
        {extra?.(step)}
        {step.pieces.length > 0 && (
          <fieldset class="pieces">
            <legend>
              {done.size} of {step.pieces.length} through
            </legend>
            {step.pieces.map((piece) => (
              <label class="tick">
                <input
                  type="checkbox"
                  checked={done.has(piece.id)}
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
        )}
        {step.why && (
          <details class="working">
            <summary>Why</summary>
            <p>
              <Say phrase={step.why} />
            </p>
          </details>
        )}
        {!finished && <Skip key={step.id} onSkip={(why) => onSkip(step, why)} />}
      </section>
      {children}
    </Screen>
  );
}

function Skip({ onSkip }: { onSkip(reason: string): void }) {
  const [reason, setReason] = useState('');
  return (
    <details class="working">
      <summary>Skip this step</summary>
      <div class="fields">
        <TextField label="Reason" value={reason} onInput={setReason} />
        <button type="button" class="button" disabled={reason.trim() === ''} onClick={() => onSkip(reason.trim())}>
          Skip it
        </button>
      </div>
    </details>
  );
}

/** The whole sequence as marks on a story stick: ticked, here, still to come. */
function StepStick({ steps, at, through, skipped }: Pick<Props, 'steps' | 'at' | 'through' | 'skipped'>) {
  const width = 328;
  const gap = width / steps.length;
  return (
    <svg class="drawing step-stick" viewBox={`0 0 ${width} 22`} aria-hidden="true">
      <path d={`M0 11H${width}`} class="thin" />
      {steps.map((step, index) => {
        const x = gap * (index + 0.5);
        const done = skipped(step) !== undefined || through(step).size >= Math.max(1, step.pieces.length);
        const half = index === at ? 10 : done ? 6 : 3;
        return (
          <path
            d={`M${x} ${11 - half}V${11 + half}`}
            class={index === at ? 'here' : done ? 'outline' : 'thin'}
            stroke-width={index === at ? 4 : 2}
          />
        );
      })}
    </svg>
  );
}
