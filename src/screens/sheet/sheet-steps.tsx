import type { ComponentChildren } from 'preact';
import { isSettled, type Ticks, throughOf } from '../../core/steps/progress.ts';
import { Length } from '../../ui/length.tsx';
import { DoneMark } from '../../ui/marks.tsx';
import { Say } from '../../ui/say.tsx';
import { SourceMark } from '../../ui/source-mark.tsx';
import type { FlowStep } from '../../ui/steps/flow-step.ts';
import { StepSaid } from '../../ui/steps/step-said.tsx';

interface Props<S extends FlowStep> {
  steps: readonly S[];
  ticks: Ticks;
  /** What else a step says. */
  extra(step: S): ComponentChildren;
}

/** A list of steps on paper, each whole, with boxes to tick by pencil; what is done already has its tick. */
export function SheetSteps<S extends FlowStep>({ steps, ticks, extra }: Props<S>) {
  const sources = new Set(steps.flatMap(({ cautions }) => cautions.map(({ source }) => source)));
  return (
    <>
      <ol class="sheet-steps">
        {steps.map((step, at) => {
          const through = throughOf(ticks, step);
          const skipped = ticks[step.id]?.skipped;
          return (
            <li class="step">
              <StepSaid of={step} />
              {extra(step)}
              {skipped !== undefined && <p>Skipped: {skipped}</p>}
              <Cautions of={step.cautions} before={steps[at - 1]?.cautions} />
              <ul class="boxes">
                {step.pieces.map(({ id, label, target }) => (
                  <li>
                    <Box done={through.has(id)} /> {label}
                    {target !== undefined && [': ', <Length mm={target} />]}
                  </li>
                ))}
                {step.pieces.length === 0 && (
                  <li>
                    <Box done={isSettled(ticks, step)} /> Done
                  </li>
                )}
              </ul>
            </li>
          );
        })}
      </ol>
      {sources.size > 0 && (
        <p class="soft small">Cautions rest on: {[...sources].map((source) => [' ', <SourceMark of={source} />])}.</p>
      )}
    </>
  );
}

type Said = FlowStep['cautions'];

/** All cautions of a step; where the step before has the very same, that is said instead. */
function Cautions({ of, before }: { of: Said; before: Said | undefined }) {
  if (of.length === 0) return null;
  const same = JSON.stringify(of) === JSON.stringify(before);
  return (
    <p class="caution small">
      <b>Caution.</b> {same ? 'As before.' : of.map(({ say }) => [<Say phrase={say} />, ' '])}
    </p>
  );
}

const Box = ({ done }: { done: boolean }) => (
  <span class="box" role="img" aria-label={done ? 'ticked:' : 'to do:'}>
    {done && <DoneMark />}
  </span>
);
